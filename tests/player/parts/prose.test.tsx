// @vitest-environment happy-dom
import { render } from 'preact';
import { describe, expect, test } from 'vitest';
import type { Block, Inline } from '../../../engine/model/prose.ts';
import { Prose } from '../../../player/parts/prose.tsx';

function draw(blocks: readonly Block[], resolve?: () => string | null): HTMLElement {
  const root = document.createElement('div');
  render(
    resolve === undefined ? <Prose blocks={blocks} /> : <Prose blocks={blocks} resolve={resolve} />,
    root,
  );
  return root;
}

const paragraph = (...children: Inline[]): Block => ({ type: 'paragraph', children });
const text = (value: string): Inline => ({ type: 'text', value });

describe('<Prose>', () => {
  test('shows HTML in the text as text', () => {
    const root = draw([paragraph(text('<img src=x onerror=alert(1)><script>alert(1)</script>'))]);
    expect(root.querySelector('img, script')).toBeNull();
    expect(root.textContent).toBe('<img src=x onerror=alert(1)><script>alert(1)</script>');
  });

  test('follows a link to the web without telling where it came from', () => {
    const root = draw([
      paragraph({ type: 'link', url: 'https://example.org', children: [text('the sheet')] }),
    ]);
    expect(root.querySelector('a')?.getAttribute('href')).toBe('https://example.org');
    expect(root.querySelector('a')?.getAttribute('rel')).toContain('noreferrer');
  });

  test('shows a link to a section or to a script as plain words', () => {
    const root = draw([
      paragraph(
        { type: 'link', url: '#rails', children: [text('Rails')] },
        { type: 'link', url: 'javascript:alert(1)', children: [text('here')] },
      ),
    ]);
    expect(root.querySelector('a')).toBeNull();
    expect(root.textContent).toBe('Railshere');
  });

  test('shows the words of a picture that may not be shown', () => {
    const root = draw([paragraph({ type: 'image', url: 'data:image/svg+xml,x', alt: 'the jumper field' })]);
    expect(root.querySelector('img')).toBeNull();
    expect(root.textContent).toBe('[the jumper field]');
  });

  test('puts the present value where a setting is named', () => {
    const value: Inline = { type: 'value', written: 'bus', formula: { kind: 'name', name: 'bus' } };
    expect(draw([paragraph(text('Count '), value)], () => '66 MHz').textContent).toBe('Count 66 MHz');
    expect(draw([paragraph(text('Count '), value)]).textContent).toBe('Count bus (not known)');
  });

  test('draws a table with a head', () => {
    const root = draw([
      {
        type: 'table',
        align: ['left', 'right'],
        rows: [
          [[text('Jumper')], [text('Bus')]],
          [[text('1-2')], [text('66')]],
        ],
      },
    ]);
    expect([...root.querySelectorAll('th')].map((cell) => cell.textContent)).toEqual(['Jumper', 'Bus']);
    expect([...root.querySelectorAll('td')].map((cell) => cell.textContent)).toEqual(['1-2', '66']);
  });

  test('keeps the number a list begins with', () => {
    const root = draw([{ type: 'list', ordered: true, start: 3, items: [[paragraph(text('a'))]] }]);
    expect(root.querySelector('ol')?.getAttribute('start')).toBe('3');
  });
});
