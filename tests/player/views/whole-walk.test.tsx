// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { createApp } from '../../../player/models/app.ts';
import { JobScreen } from '../../../player/views/job/job-screen.tsx';
import { lookWhole, wholeWalks } from '../../helpers/look-whole.ts';
import { benchPorts } from '../helpers/bench-ports.ts';
import { putOnBench } from '../helpers/put-on-bench.ts';
import { stage } from '../helpers/stage.ts';

const tree = lookWhole();
let page: ReturnType<typeof stage>;
/** Time the page believes in: it passes only between keys. */
let now = 0;

async function show(walk: keyof typeof wholeWalks, ...more: readonly string[]) {
  const ports = benchPorts(tree);
  await putOnBench(ports, tree, ...wholeWalks[walk], ...more);
  await page.draw(<JobScreen app={createApp(ports)} id="job" />);
  return ports;
}

/** What stands there, whichever spaces keep it together. */
const text = (what: string) => page.text(what)?.replaceAll('\u00a0', ' ') ?? null;
const field = () => page.find<HTMLInputElement>('.desk .field-input');
const type = (words: string) => page.type('.desk .field-input', words);
const enter = () => page.submit('.desk form');
const press = (key: string, more: KeyboardEventInit = {}, on: Element = document.body) => {
  now += 1000;
  return page.press(key, more, on);
};
const alt = (letter: string) => press(letter.toLowerCase(), { altKey: true, code: `Key${letter}` });
const main = () => text('.desk .action-main > span');

beforeEach(() => {
  vi.spyOn(performance, 'now').mockImplementation(() => now);
  page = stage();
});
afterEach(() => {
  page.strike();
  vi.restoreAllMocks();
});

describe('what must be seen first', () => {
  test('is named with how it stands, and its own field stands right there', async () => {
    await show('what must be seen first');
    expect(text('.task')).toBe('See this before 5 V at the slot, measured under load');
    expect(text('.lack-list li')).toContain('must be good');
    expect(text('.lack-now')).toBe('not read yet');
    expect(text('.desk h2')).toBe('Resistance of the 5 V rail to ground');
    await type('150');
    expect(text('.understanding strong')).toBe('good');
    await enter();
    expect(text('.desk h2')).toBe('5 V at the slot, measured under load');
  });

  test('says what it was where it is out of what it must be', async () => {
    await show('what must be seen first and is wrong');
    expect(text('.lack-now')).toBe('is 12 Ω, low');
  });

  test('can be passed over with a reason and not without', async () => {
    const ports = await show('what must be seen first');
    const over = page
      .all<HTMLElement>('.desk-foot button')
      .find((one) => one.textContent === 'Go on all the same');
    over?.click();
    await page.settle();
    const sheet = page.find<HTMLButtonElement>('dialog .action-main');
    expect(sheet.disabled).toBe(true);
    await page.type('dialog .words-input', 'lab supply with a limit');
    await page.submit('dialog form');
    expect(text('.desk h2')).toBe('5 V at the slot, measured under load');
    const job = await ports.store.load('job');
    expect(job.ok && job.value.entries.at(-1)).toMatchObject({
      kind: 'overrode',
      reading: 'v5',
      why: 'lab supply with a limit',
    });
  });
});

describe('conditions of the board', () => {
  test('are told loud by the task that sets them', async () => {
    await show('a task that sets a condition');
    expect(text('.power-changed')).toBe('CardsOUT from now on');
  });

  test('are asked for before the reading, each as it is and as it must be', async () => {
    await show('conditions to be arranged');
    expect(page.texts('.turns li')).toEqual(['CPUin→toOUT']);
    expect(main()).toBe('It is so: CPU out');
    await press('Enter');
    expect(text('.desk h2')).toBe('The same with every card and the CPU out');
    expect(page.texts('.strip .power')).toEqual(['PowerON', 'CardsOUT', 'CPUOUT']);
  });
});

describe('a procedure', () => {
  test('is named with what it is given, its hazards and its ends', async () => {
    await show('a call');
    expect(text('.task')).toBe('Follow "Short on a rail".');
    expect(page.texts('.step .facts dd')).toEqual(['5\u00a0V at the slot, measured under load', '2\u00a0Ω']);
    expect(text('.hazard-word')).toBe('Caution');
    expect(page.texts('.ends strong')).toEqual(['found', 'not found']);
    expect(main()).toBe('Begin the procedure');
  });

  test('stands over each of its steps', async () => {
    await show('a step of a procedure');
    expect(text('h1')).toBe('Measure it cold');
    expect(text('.crumbs')).toContain('Short on a rail');
    expect(text('.why')).toContain('Following "Short on a rail"');
  });

  test('is a reading beside, by how it ended, and cannot be retaken', async () => {
    await show('a remedy that asks which');
    const row =
      page.all('.beside .row').find((one) => one.textContent?.startsWith('Find the short')) ??
      page.all('.beside .row').find((one) => one.textContent?.includes('what the procedure found'));
    expect(row?.textContent).toContain('found');
    expect(row?.querySelector('.row-again')).toBeNull();
  });
});

describe('a remedy', () => {
  test('asks for the place as its fault does', async () => {
    await show('a remedy that asks which');
    expect(text('.parts-form label')).toBe('Which part');
    expect(page.texts('p').join()).not.toContain('left behind');
  });

  test('says before a spare goes in what else may have died', async () => {
    const [other] = tree.faults.slice(-1);
    const brings = { [other?.id ?? '']: 0.5 };
    const leaving = {
      ...tree,
      faults: tree.faults.map((fault) => (fault === other ? fault : { ...fault, brings })),
    };
    const ports = benchPorts(leaving);
    await putOnBench(ports, leaving, ...wholeWalks['a remedy that asks which']);
    await page.draw(<JobScreen app={createApp(ports)} id="job" />);
    expect(page.texts('p')).toContain(
      `Before a spare goes in, look for what this may have left behind: ${other?.is} (in 50 % of such cases).`,
    );
  });
});

describe('too close to call', () => {
  test('says how far the instrument can be off, which bands are possible, and what would settle it', async () => {
    await show('too close to call, and what settles it');
    expect(text('.unsettled')).toContain(
      '4.754 V, ± 7.4 mV with the bench meter: low and good are both possible.',
    );
    expect(text('.unsettled')).toContain('The reference meter (± 2.5 mV), or the average of');
    expect(page.texts('.ways .action span:first-child')).toEqual([
      'Go on as if 5 V at the slot, measured under load: good',
      'Go on as if 5 V at the slot, measured under load: low',
    ]);
  });

  test('shows while typing in the width of the pointer', async () => {
    await show('a reading with instruments');
    await type('4.754');
    expect(page.all('.needle-side')).toHaveLength(2);
    expect(page.all('.needle-edge')).toHaveLength(1);
    expect(text('.understanding')).toContain('± 7.4 mV with the bench meter');
    expect(page.texts('.gauge .band-read')).toEqual(['low', 'good']);
  });
});

describe('many alike', () => {
  test('are typed in any order, and each shows what was said of it', async () => {
    await show('many alike');
    await type('a5 floats; A3 stuck');
    expect(page.texts('.member-off')).toEqual(['A3stuck', 'A5floats']);
    expect(text('.understanding')).toContain('Not taken');
    await alt('A');
    expect(field().value).toBe('a5 floats; A3 stuck; rest moves');
    expect(text('.understanding')).toContain('stuck and floats');
  });

  test('are turned one by one by pressing them, and the field says the same', async () => {
    await show('many alike');
    await page.click('.member', 3);
    expect(field().value).toBe('A3 stuck; rest moves');
    await page.click('.member', 3);
    expect(field().value).toBe('A3 floats; rest moves');
    await page.click('.member', 3);
    expect(field().value).toBe('all moves');
  });

  test('are all normal with one key, and entered with the next', async () => {
    await show('many alike');
    await alt('A');
    expect(field().value).toBe('all moves');
    await enter();
    expect(text('.desk h2')).toBe('Supply of the four memory banks');
    expect(text('.beside')).toContain('all normal');
  });

  test('that are measured share one scale, with a pointer for each', async () => {
    await show('many values alike');
    await page.click('.member', 1);
    expect(field().value).toBe('bank1 ');
    await type('bank1 2.9; rest 3.3');
    expect(page.all('.needle-edge')).toHaveLength(4);
    expect(page.texts('.member')).toEqual(['bank03.3 V', 'bank12.9 V', 'bank23.3 V', 'bank33.3 V']);
  });
});

describe('beeps', () => {
  test('can be chosen, typed or tapped along', async () => {
    await show('beeps');
    await page.click('.beep-row', 3);
    expect(field().value).toBe('1-3-3');
    await type('');
    const tap = page.all<HTMLElement>('.tap-along button');
    for (const at of [0, 1, 1]) {
      tap[at]?.click();
      await page.settle();
    }
    expect(field().value).toBe('long short short');
    expect(text('.beep-row[aria-pressed="true"]')).toContain('video');
  });
});

describe('a count', () => {
  test('goes up with two keys and says how many more settle it', async () => {
    await show('a count');
    expect(text('.tries-left')).toContain('20 alike in a row settle it');
    for (let time = 0; time < 3; time += 1) await alt('J');
    expect(field().value).toBe('3 of 3');
    expect(text('.tries-left')).toContain('3 worked, 0 failed');
    expect(text('.tries-left')).toContain('17 more without a failure settle it');
    await alt('K');
    expect(field().value).toBe('3 of 4');
    expect(text('.tries-left')).toContain('that settles it');
    expect(page.all('.pip-failed')).toHaveLength(1);
  });

  test('in a proof says how many must work', async () => {
    await show('a proof by counting');
    expect(text('.expected')).toContain('20 of 20');
    expect(text('.tries-left')).toContain('20 in a row must work');
    await type('19 of 19');
    await enter();
    expect(text('[role="alert"]')).toContain('The proof asks for 20 tries in a row');
  });
});

describe('what readings say together', () => {
  test('is said when it is found, and stays beside', async () => {
    await show('a common factor');
    const found =
      'Three readings show 0.63 of what they should (spread 0.23 %). Look upstream of where they part.';
    expect(text('.finding')).toBe(found);
    expect(text('.beside .ledger')).toContain(found);
    expect(text('.beside .ledger')).toContain('from CPU clock at the socket, Slot clock, 48 MHz clock');
  });

  test('is not said again at a step that it has no part in', async () => {
    await show('a common factor', 'note: looked again');
    expect(page.root.querySelector('.finding')).toBeNull();
  });
});

describe('a board that runs all of a sudden', () => {
  test('is asked what was touched, whether undoing it brings the fault back, and what that speaks of', async () => {
    const ports = await show('many alike');
    await alt('M');
    const line = page.all<HTMLElement>('dialog button').find((one) => one.textContent?.startsWith('It runs'));
    line?.click();
    await page.settle();
    await page.type('dialog .words-input', 'pressed the address joint');
    await page.submit('dialog form');
    expect(text('dialog h2')).toBe('Undo what was touched');
    expect(text('dialog')).toContain('An address line is stuck');
    await page.click('dialog .action-row', 0);
    const job = await ports.store.load('job');
    expect(job.ok && job.value.entries.at(-1)).toMatchObject({ kind: 'runs', undone: 'fails again' });
    expect(page.root.querySelector('dialog')).toBeNull();
  });

  test('is read as running from then on, until it is said to fail', async () => {
    const ports = await show('many alike', 'runs: pressed the address joint');
    expect(text('.desk-foot')).toContain('Board runs now');
    await type('all moves');
    await enter();
    const job = await ports.store.load('job');
    expect(job.ok && job.value.entries.at(-1)).toMatchObject({ kind: 'read', board: 'running' });
  });
});
