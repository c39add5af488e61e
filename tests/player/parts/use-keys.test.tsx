// @vitest-environment happy-dom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test } from 'vitest';
import { type KeyTable, useKeys } from '../../../player/parts/use-keys.ts';

let root: HTMLElement;

function listen(table: (pressed: (key: string) => void) => KeyTable): string[] {
  const seen: string[] = [];
  const Keys = () => {
    useKeys(table((key) => seen.push(key)));
    return (
      <>
        <input id="field" />
        <button id="button" type="button">
          x
        </button>
      </>
    );
  };
  root = document.createElement('div');
  document.body.append(root);
  act(() => render(<Keys />, root));
  return seen;
}

const press = (key: string, more: KeyboardEventInit = {}, on: Element = document.body) =>
  on.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more }));

const all = (pressed: (key: string) => void): KeyTable => ({
  Enter: () => pressed('Enter'),
  '=': () => pressed('='),
  '?': () => pressed('?'),
  'Alt B': () => pressed('Alt B'),
});

const field = (value: string): HTMLInputElement => {
  const input = root.querySelector<HTMLInputElement>('#field');
  if (input === null) throw new Error('expected the field');
  input.value = value;
  return input;
};

afterEach(() => {
  act(() => render(null, root));
  root.remove();
});

describe('useKeys()', () => {
  test('hears a key on the page, and not its repeats', () => {
    const seen = listen(all);
    press('Enter');
    press('Enter', { repeat: true });
    expect(seen).toEqual(['Enter']);
  });

  test('leaves keys to a field in which something stands', () => {
    const seen = listen(all);
    press('=', {}, field('4.9'));
    press('?', {}, field('4.9'));
    expect(seen).toEqual([]);
  });

  test('hears single keys in an empty field, but leaves Enter to it', () => {
    const seen = listen(all);
    press('=', {}, field(''));
    press('Enter', {}, field(''));
    expect(seen).toEqual(['=']);
  });

  test('hears Alt with a letter while something is typed, by the place of the letter', () => {
    const seen = listen(all);
    press('∫', { altKey: true, code: 'KeyB' }, field('4.9'));
    expect(seen).toEqual(['Alt B']);
  });

  test('leaves Ctrl and Meta to the browser', () => {
    const seen = listen(all);
    press('Enter', { ctrlKey: true });
    press('b', { altKey: true, ctrlKey: true, code: 'KeyB' });
    expect(seen).toEqual([]);
  });

  test('leaves Enter to a button that has the focus', () => {
    const seen = listen(all);
    const button = root.querySelector('#button');
    if (button !== null) press('Enter', {}, button);
    expect(seen).toEqual([]);
  });

  test('is deaf while a dialog is open', () => {
    const seen = listen(all);
    const dialog = document.createElement('dialog');
    dialog.setAttribute('open', '');
    root.append(dialog);
    press('Enter');
    expect(seen).toEqual([]);
  });
});
