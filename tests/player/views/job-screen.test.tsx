// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { createApp } from '../../../player/models/app.ts';
import { JobScreen } from '../../../player/views/job/job-screen.tsx';
import { benchTree, opened } from '../../helpers/bench.ts';
import { benchPorts } from '../helpers/bench-ports.ts';
import { putOnBench } from '../helpers/put-on-bench.ts';
import { stage } from '../helpers/stage.ts';

const tree = benchTree();
let page: ReturnType<typeof stage>;
/** Time the page believes in: it passes only between keys. */
let now = 0;

async function show(...answers: readonly string[]) {
  const ports = benchPorts(tree);
  await putOnBench(ports, tree, ...opened, ...answers);
  await page.draw(<JobScreen app={createApp(ports)} id="job" />);
  return ports;
}

const text = (what: string) => page.text(what);
const field = () => page.find<HTMLInputElement>('.desk .field-input');
const type = (words: string) => page.type('.desk .field-input', words);
const enter = () => page.submit('.desk form');
const press = (key: string, more: KeyboardEventInit = {}, on: Element = document.body) => {
  now += 1000;
  return page.press(key, more, on);
};

beforeEach(() => {
  vi.spyOn(performance, 'now').mockImplementation(() => now);
  page = stage();
});
afterEach(() => {
  page.strike();
  vi.restoreAllMocks();
});

describe('<JobScreen>', () => {
  test('shows the section, what it should read and why the step follows', async () => {
    await show('nothing');
    expect(text('h1')).toBe('Rails');
    expect(text('.why')).toContain('What happened last: nothing');
    expect(text('.expected')).toContain('4.75 … 5.25');
    expect(text('.desk h2')).toBe('5 V at the slot');
    expect(text('.place')).toBe('1 of 2');
    expect(text('.power')).toContain('ON');
  });

  test('says while typing how it is understood, and where it leads', async () => {
    await show('nothing', '5');
    await type('0,1');
    expect(text('.understanding')).toContain('0.1');
    expect(text('.understanding strong')).toBe('low');
    expect(text('.leads')).toContain('No power-good');
    expect(page.all('.needle-edge')).toHaveLength(1);
  });

  test('enters a reading that is understood, and asks for the next', async () => {
    await show('nothing');
    await type('5,02');
    await enter();
    expect(text('.desk h2')).toBe('Power-good, one second after switch-on');
    expect(field().value).toBe('');
    expect(text('.beside')).toContain('5.02');
  });

  test.each(['', 'five'])(
    'leaves everything as it is when Enter comes with "%s" in the field',
    async (words) => {
      const ports = await show('nothing');
      const before = await ports.store.load('job');
      await type(words);
      await enter();
      await enter();
      expect(field().value).toBe(words);
      expect(text('.desk h2')).toBe('5 V at the slot');
      expect(await ports.store.load('job')).toEqual(before);
      expect(page.find<HTMLButtonElement>('.answer-row button').disabled).toBe(true);
    },
  );

  test('puts what was offered into the field', async () => {
    await show('nothing');
    await type('5 MHz');
    await page.click('.offer');
    expect(field().value).toMatch(/V$/);
  });

  test('chooses from a row by number, and enters only with Enter', async () => {
    await show();
    expect(page.texts('.option-name')).toEqual(['nothing', 'storage', 'upgrade']);
    await press('3', {}, field());
    expect(field().value).toBe('upgrade');
    expect(text('h1')).toBe('Ask first');
    await enter();
    expect(text('h1')).toBe('Set the jumpers');
  });

  test('takes the value from before with one key', async () => {
    await show('nothing', '5.02', 'back');
    expect(text('.known')).toContain('5.02\u00a0V');
    await press('=', {}, field());
    expect(text('.desk h2')).toBe('Power-good, one second after switch-on');
  });

  test('shows a danger before the reading, and again in small beside it', async () => {
    await show('nothing', '5', '4.5');
    expect(text('.hazard-word')).toBe('Danger');
    expect(page.root.querySelector('.field-input')).toBeNull();
    await press('Enter');
    expect(text('.desk h2')).toBe('CPU clock at the socket');
    expect(text('.hazard-quiet .hazard-word')).toBe('Danger');
  });

  test('does not take the Enter of the step before for an acknowledgement', async () => {
    await show('nothing', '5', '4.5');
    now -= 1000;
    await press('Enter');
    expect(text('.hazard-word')).toBe('Danger');
    await press('Enter');
    expect(text('.desk h2')).toBe('CPU clock at the socket');
  });

  test('puts the present settings into the prose', async () => {
    await show('nothing', '5', '4.5', 'acknowledge');
    expect(page.texts('.prose .value')).toEqual(['33 MHz', '66 MHz']);
  });

  test('goes a step back with Alt B', async () => {
    await show('nothing', '5');
    await press('b', { altKey: true, code: 'KeyB' });
    expect(text('.place')).toBe('1 of 2');
  });

  test('counts the time of a wait from its entry', async () => {
    const ports = await show('upgrade', 'wait');
    expect(text('.timer-left')).toContain('2:00');
    ports.clock.forward(1.5);
    await page.settle();
    expect(text('.timer-left')).toContain('0:30');
    ports.clock.forward(1);
    await page.settle();
    expect(text('.timer-left')).toContain('the time is over');
  });

  test('offers every way that is open when it is too close to call', async () => {
    await show('nothing', '4.7..4.8', '4.9');
    expect(text('h1')).toBe('Too close to call');
    expect(page.texts('.ways .action span:first-child').sort()).toEqual([
      'Go on as if 5 V at the slot: good',
      'Go on as if 5 V at the slot: low',
    ]);
  });

  test('lists the proof and how each reading stands', async () => {
    await show('nothing', '5', '0.1', 'remedied', '4.9');
    const rows = page.texts('.proof-row .proof-word');
    expect(rows).toEqual(['good', 'now']);
  });

  test('names what is ruled out and by which reading', async () => {
    await show('nothing', '5');
    const beside = (text('.beside') ?? '').replaceAll('\u00a0', ' ');
    expect(beside).toContain('The supply gives no 5 V');
    expect(beside).toContain('5 V at the slot: good');
  });

  test('keeps the value in the field when the store is full, and offers a file', async () => {
    const ports = await show('nothing');
    ports.store.failWith({ kind: 'full' });
    await type('5.02');
    await enter();
    expect(field().value).toBe('5.02');
    expect(text('[role="alert"]')).toContain('no room left');
    await page.click('.notice-actions button');
    expect(ports.files.saved.map(({ name }) => name)).toEqual(['board-7-2031-04-05.json']);
  });
});
