// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { questionOf, replay } from '../../../engine/run/index.ts';
import { createApp } from '../../../player/models/app.ts';
import type { Ports } from '../../../player/ports/ports.ts';
import { InstrumentsScreen } from '../../../player/views/instruments/instruments-screen.tsx';
import { JobScreen } from '../../../player/views/job/job-screen.tsx';
import { OpeningScreen } from '../../../player/views/opening/opening-screen.tsx';
import { benchTree, opened, treeOf } from '../../helpers/bench.ts';
import { handingOver } from '../../helpers/handing-over.ts';
import { benchPorts, treesOf } from '../helpers/bench-ports.ts';
import { benchSheet } from '../helpers/bench-sheet.ts';
import { putOnBenchWith } from '../helpers/put-on-bench.ts';
import { stage } from '../helpers/stage.ts';

const tree = benchTree();
const board = benchSheet();
const onSheet = { board, laterTrees: [] };
const meter = 'bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV';
let page: ReturnType<typeof stage>;
/** Time the page believes in: it passes only between presses. */
let now = 0;
const text = (what: string) => page.text(what);

beforeEach(() => {
  page = stage();
  vi.spyOn(performance, 'now').mockImplementation(() => now);
});
afterEach(() => {
  page.strike();
  vi.restoreAllMocks();
});

const portsWith = (...trees: readonly CompiledTree[]) => ({
  ...benchPorts(),
  trees: treesOf(trees, [board]),
});

async function stored(ports: Ports, id = 'job') {
  const job = await ports.store.load(id);
  if (!job.ok) throw new Error(job.problem.kind);
  return job.value;
}

async function show(ports: Ports, of: CompiledTree, ...answers: readonly string[]) {
  await putOnBenchWith(ports, of, onSheet, ...answers);
  await page.draw(<JobScreen app={createApp(ports)} id="job" />);
}

/** The button whose words begin so. */
const press = (words: string) => {
  const index = page.texts('button').findIndex((button) => button?.startsWith(words));
  if (index < 0)
    throw new Error(`expected a button "${words}", there are: ${page.texts('button').join(' | ')}`);
  now += 1000;
  return page.click('button', index);
};

describe('the opening', () => {
  test('offers the sheets for this class of board, and the job takes the chosen one along', async () => {
    const ports = portsWith(tree);
    await page.draw(<OpeningScreen app={createApp(ports)} tree={tree.id} />);
    expect(page.texts('.sheet-choice label')).toEqual([
      'Nonethe tree alone says what should be read',
      'Kestrel K5knows where to touch for 3 readings and 3 jumpers',
    ]);
    await page.type('.words-input', 'Board 9');
    await page.click('.sheet-choice input', 1);
    await page.submit('form');
    expect((await stored(ports, 'job1')).board).toEqual(board);
  });

  test('goes on without a sheet when none is chosen', async () => {
    const ports = portsWith(tree);
    await page.draw(<OpeningScreen app={createApp(ports)} tree={tree.id} />);
    await page.type('.words-input', 'Board 9');
    await page.submit('form');
    expect((await stored(ports, 'job1')).board).toBe(null);
  });

  test('asks for no sheet where none fits the class of board', async () => {
    const ports = portsWith({ ...tree, boards: ['286'] });
    await page.draw(<OpeningScreen app={createApp(ports)} tree={tree.id} />);
    expect(text('h1')).toBe(tree.symptom);
    expect(page.all('.sheet-choice')).toEqual([]);
  });

  test('opens nothing when the chosen sheet cannot be fetched, and says what to do', async () => {
    const ports = portsWith(tree);
    const trees = { ...ports.trees, loadBoard: async () => ({ ok: false, why: 'no answer' }) as const };
    await page.draw(<OpeningScreen app={createApp({ ...ports, trees })} tree={tree.id} />);
    await page.type('.words-input', 'Board 9');
    await page.click('.sheet-choice input', 1);
    await page.submit('form');
    expect(text('[role="alert"]')).toContain('no answer. Without a sheet the job can be opened now');
    expect(await ports.store.list()).toEqual({ ok: true, value: [] });
  });

  test('notes what is at this bench in the new job', async () => {
    const ports = portsWith(tree);
    ports.settings.write(
      'equipment',
      JSON.stringify({ instruments: [meter], lacking: ['scope'], rule: 'simple' }),
    );
    await page.draw(<OpeningScreen app={createApp(ports)} tree={tree.id} />);
    await page.type('.words-input', 'Board 9');
    await page.submit('form');
    expect((await stored(ports, 'job1')).entries[1]).toMatchObject({
      kind: 'equipped',
      equipment: { instruments: [{ name: 'bench meter' }], lacking: ['scope'], rule: 'simple' },
    });
  });
});

describe('a setting of a board with a jumper table', () => {
  test('is written by pressing where the jumpers sit', async () => {
    const ports = portsWith(tree);
    await show(ports, tree, 'open: Board 7; ; ');
    await page.click('.jumper .position', 0);
    expect(text('.understanding')).toContain('Where does JP2 sit?');
    await page.click('.jumper .position', 3);
    expect(page.find<HTMLInputElement>('.field-input').value).toBe('JP1 1-2, JP2 2-3');
    expect(text('.understanding')).toContain('40\u00a0MHz');
    await page.submit('.desk form');
    expect((await stored(ports)).entries.at(-1)).toMatchObject({
      kind: 'set',
      typed: 'JP1 1-2, JP2 2-3',
      value: { value: '40000000' },
    });
  });

  test('shows where the jumpers belong for a value that is typed', async () => {
    await show(portsWith(tree), tree, 'open: Board 7; ; ');
    await page.type('.desk .field-input', '33');
    expect(page.texts('.position-wanted')).toEqual(['1-2 belongs here', '1-2 belongs here']);
    expect(text('.jumpers [role="status"]')).toBe('33\u00a0MHz: JP1 1-2, JP2 1-2');
    await page.type('.desk .field-input', '41');
    expect(text('.jumpers [role="status"]')).toContain('No position of these jumpers makes');
  });
});

describe('a reading on a board with a sheet', () => {
  test('names the points of the sheet with their numbers, and what known-good boards showed', async () => {
    await show(portsWith(tree), tree, ...opened, 'nothing');
    expect(page.texts('.lead dd')).toEqual(['1slot contact B3', '2slot contact B1, ground']);
    expect(text('.pictures')).not.toBe(null);
    expect(text('.known-good')).toContain('5.02\u00a0V (board sheet, 2026-03-02, bench meter)');
  });
});

const swing = treeOf(
  `---
format: 1
kind: tree
title: Weak reference
symptom: Nothing at all
boards: [486]
readings:
  ref: { is: Swing of the reference, unit: Vpp, scale: weak < twin * 60 % < good, normal: good, source: common practice }
faults:
  xtal: { is: The crystal is worn, shows: { ref: weak }, source: common practice }
---

## Reference

Read \`ref\`.

- weak → [Crystal](#crystal)
- otherwise → [Fine](#fine)

## Crystal

Fault \`xtal\`.

Fit another.

Prove \`ref\`.

## Fine

Stop: It is fine.
`,
  'swing',
);

describe('the known-good board', () => {
  test('is read in a sheet of its own, and judges what follows', async () => {
    const ports = portsWith(swing);
    await show(ports, swing, 'open: Board 7; ; ');
    expect(text('.known-good')).toContain('decides here');
    await press('Read it on the known-good board');
    await page.type('dialog .field-input', '1,2');
    expect(text('dialog .understanding')).toContain('1.2');
    await page.submit('dialog form');
    expect((await stored(ports)).entries.at(-1)).toMatchObject({
      kind: 'twin',
      observation: { typed: '1,2' },
    });
    expect(text('.known-good')).toContain('1.2\u00a0Vpp (read in this job)');
    expect(text('.expected')).toContain('0.72');
  });

  test('enters nothing that is no single value', async () => {
    const ports = portsWith(swing);
    await show(ports, swing, 'open: Board 7; ; ');
    await press('Read it on the known-good board');
    await page.type('dialog .field-input', 'OL');
    await page.submit('dialog form');
    expect(text('dialog .understanding')).toContain('not one value');
    expect((await stored(ports)).entries.at(-1)?.kind).toBe('opened');
  });
});

describe('what has changed around a job', () => {
  const newer = { ...tree, digest: 'newer' };

  test('is offered, and the job moves to the newer tree when that is said', async () => {
    const ports = portsWith(newer);
    await show(ports, tree, ...opened, 'nothing', '5.02');
    expect(text('.notice')).toContain('another version of "Board held in reset"');
    await press('Go on with it');
    const job = await stored(ports);
    expect(job.entries.at(-1)).toMatchObject({ kind: 'tree', digest: 'newer', why: 'newer' });
    expect(job.laterTrees).toEqual([newer]);
    expect(page.all('.notice')).toEqual([]);
    expect(questionOf(replay(job.tree, job.entries, job))).toMatchObject({
      ask: 'reading',
      reading: { id: 'pg' },
    });
  });

  test('is left alone when it is put away, and nothing is offered for the same tree', async () => {
    const ports = portsWith(newer);
    await show(ports, tree, ...opened, 'nothing');
    await press('Stay with this one');
    expect(page.all('.notice')).toEqual([]);
    expect((await stored(ports)).laterTrees).toEqual([]);
  });

  test('keeps the job as it is when the newer tree cannot be fetched', async () => {
    const ports = portsWith(newer);
    const trees = { ...ports.trees, load: async () => ({ ok: false, why: 'no answer' }) as const };
    await show({ ...ports, trees }, tree, ...opened, 'nothing');
    await press('Go on with it');
    expect(text('[role="alert"]')).toContain('no answer. The job stays as it is');
    expect((await stored(ports)).entries.at(-1)?.kind).toBe('read');
  });

  test('takes other instruments of this bench when that is said', async () => {
    const ports = portsWith(tree);
    ports.settings.write('equipment', JSON.stringify({ instruments: [meter] }));
    await show(ports, tree, ...opened, 'nothing');
    expect(text('.notice')).toContain('other instruments');
    await press("Go by this bench's");
    expect((await stored(ports)).entries.at(-1)).toMatchObject({ kind: 'equipped' });
    expect(page.all('.notice')).toEqual([]);
  });
});

test('a hand-over fetches the other tree, keeps it with the job and goes on there', async () => {
  const over = handingOver(swing, 'fine', tree.id);
  const ports = portsWith(over, tree);
  await show(ports, over, 'open: Board 7; ; ', 'twin ref = 1 Vpp', '1 Vpp');
  await press('Go on there');
  const job = await stored(ports);
  expect(job.laterTrees.map(({ id }) => id)).toEqual([tree.id]);
  expect(job.entries.at(-1)).toMatchObject({ kind: 'tree', why: 'handed over' });
  expect(text('.desk-title')).toContain('Bus clock set by the jumpers');
});

describe('<InstrumentsScreen>', () => {
  test('shows how a line is understood while it is typed, and keeps it', async () => {
    const ports = portsWith(tree);
    await page.draw(<InstrumentsScreen app={createApp(ports)} />);
    await page.type('.instrument-input', 'bench meter');
    expect(text('.instrument-understanding')).toContain('Not understood');
    await page.type('.instrument-input', meter);
    expect(text('.instrument-understanding')).toContain('up to 6\u00a0V: ± 32\u00a0mV at most');
    await page.submit('.instrument-form');
    expect(page.texts('.instrument-line')).toEqual([
      'bench meter (meter): 6\u00a0V ± (0.5\u00a0% + 2) at 1\u00a0mV',
    ]);
    expect(ports.settings.read('equipment')).toContain('bench meter');
  });

  test('lists the tools that trees ask for, to be ticked where they are missing', async () => {
    const ports = portsWith(tree);
    await page.draw(<InstrumentsScreen app={createApp(ports)} />);
    expect(page.texts('.choice-many label')).toEqual(['meter', 'scope']);
    const [, scope] = page.all<HTMLInputElement>('.choice-many input');
    if (scope !== undefined) scope.checked = true;
    scope?.dispatchEvent(new Event('change', { bubbles: true }));
    expect(JSON.parse(ports.settings.read('equipment') ?? '')).toMatchObject({ lacking: ['scope'] });
  });
});

test('the sheet of instruments notes them in the job, for the readings that follow', async () => {
  const ports = portsWith(tree);
  await show(ports, tree, ...opened, 'nothing');
  await press('More');
  await press('Instruments');
  await page.type('dialog .instrument-input', meter);
  await page.submit('dialog .instrument-form');
  await press('Go by these from now on');
  expect((await stored(ports)).entries.at(-1)).toMatchObject({
    kind: 'equipped',
    equipment: { instruments: [{ name: 'bench meter' }] },
  });
});

test('the sheet of the board tells what may be fitted together and what was read on a known-good one', async () => {
  await show(portsWith(tree), tree, ...opened, 'nothing');
  await press('More');
  await press('The board');
  expect(text('dialog')).toContain('Fill A and B, or A and B and C and D.');
  expect(text('dialog .facts')).toContain('5.02\u00a0V');
});
