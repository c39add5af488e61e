import { describe, expect, test } from 'vitest';
import { recordMarkdown, recordOf } from '../../../engine/job/index.ts';
import { problemsOfJob } from '../../../engine/job/validate-job.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import type { Job } from '../../../engine/model/job.ts';
import type { Parts } from '../../../engine/run/index.ts';
import { benchTree, opened, walkWith, wholeTree } from '../../helpers/bench.ts';
import { handingOver } from '../../helpers/handing-over.ts';
import { boardOf } from '../board/sheet.ts';

const none: Parts = { board: null, laterTrees: [] };
const meter = 'instruments: bench meter (meter): 6 V ± (0.5 % + 2) at 10 mV; 60 V ± (0.8 % + 3) at 10 mV';
const started = ['open: Board 9', '66', '66', 'none', 'r_v5 = 150'];

function jobWith(tree: CompiledTree, parts: Parts, ...answers: readonly string[]): Job {
  const { entries } = walkWith(tree, parts, ...answers);
  const job: Job = { format: 1, kind: 'job', id: 'j1', tree, ...parts, entries };
  expect(problemsOfJob(job)).toEqual([]);
  return job;
}
const recordWith = (...answers: readonly string[]) =>
  recordOf(jobWith(wholeTree(), none, ...started, ...answers));
const rowOf = (record: ReturnType<typeof recordOf>, reading: string) =>
  record.readings.findLast((row) => row.reading === reading);

describe('the record of readings in doubt', () => {
  // ILAC-G8:09/2019 with a guard band w = U, against 4.75 V, U = 0.5 % of the reading + 20 mV (computed):
  // ± 43.8 mV at 4.76 V, ± 43.7 mV at 4.74 V, ± 45 mV at 5 V, ± 40 mV at 4 V. The probability
  // by JCGM 106 with u = U/√3 (computed): Φ(±0.3954) = 0.654 and 0.346.
  test.each([
    ['5', 'pass', 1],
    ['4.76', 'conditional pass', 0.654],
    ['4.74', 'conditional fail', 0.346],
    ['4', 'fail', 0],
  ] as const)('says of %s V what it is by the four-way verdict: %s', (typed, verdict, probability) => {
    const { doubt } = rowOf(recordWith(meter, `v5 = ${typed}`), 'v5') ?? {};
    expect(doubt).toMatchObject({ instrument: 'bench meter', verdict });
    expect(doubt?.probability).toBeCloseTo(probability, 3);
  });

  test('keeps how far off the instrument may have been', () => {
    expect(rowOf(recordWith(meter, 'v5 = 4.76'), 'v5')).toMatchObject({
      value: '4.76 V',
      bands: ['low', 'good'],
      verdict: 'open',
      doubt: { plusMinus: '± 43.8 mV' },
    });
  });

  test('has no doubt where nobody told of an instrument', () => {
    const record = recordWith('v5 = 4.76');
    expect(record.bench).toBeNull();
    expect(rowOf(record, 'v5')).toMatchObject({ bands: ['good'], verdict: 'normal', doubt: null });
  });

  test.each([
    ['simple', 'Simple acceptance: a value counts as what was shown (JCGM 106)'],
    ['guarded', 'Guarded acceptance: a value near a limit counts as all that it can be (JCGM 106)'],
  ])('names the rule that it was decided by: %s', (rule, words) => {
    const record = recordWith(meter, `rule: ${rule}`, 'lacking: scope', 'v5 = 4.76');
    expect(record.bench).toEqual({
      instruments: [meter.slice('instruments: '.length)],
      lacking: ['scope'],
      rule,
    });
    const page = recordMarkdown(record, 'bench');
    expect(page).toContain(`- ${words}`);
    expect(page).toContain('- Not at hand: scope');
    expect(page).toContain('| 4.76 V ± 43.8 mV |');
  });
});

describe('the record of what limits rested on', () => {
  test("tells the known-good board's value and that it was read in this job", () => {
    const record = recordWith('go reference', 'twin ref_swing = 1.3 Vpp', '0.7');
    // 60 % of 1.3 Vpp (computed)
    expect(rowOf(record, 'ref_swing')).toMatchObject({
      bands: ['weak'],
      twin: '1.3 Vpp, read in this job',
      expected: 'at least 0.78 Vpp',
    });
    expect(record.events.map(({ text }) => text)).toContain(
      'Known-good board, Swing of the reference clock: 1.3 Vpp',
    );
    expect(recordMarkdown(record, 'bench')).toContain(
      '- Known-good board, Swing of the reference clock: 1.3 Vpp, read in this job',
    );
  });

  test("tells the board sheet's value with its day and instrument", () => {
    const board = boardOf(
      'references:\n  - { date: 2026-01-05, instrument: bench scope, readings: { ref_swing: 1.2 Vpp } }',
      { conditions: [], settings: [], readings: wholeTree().readings, faults: [] },
    );
    const job = jobWith(wholeTree(), { board, laterTrees: [] }, ...started, 'go reference', '0.9');
    const record = recordOf(job);
    expect(rowOf(record, 'ref_swing')?.twin).toBe('1.2 Vpp, by the board sheet (2026-01-05, bench scope)');
    expect(record.sheet).toEqual({ id: 'plover-p2', title: 'Plover P2', digest: board.digest });
    expect(recordMarkdown(record, 'bench')).toContain('board sheet "Plover P2" (plover-p2, ');
  });

  test('tells a setting with the jumpers that it was noted by', () => {
    const board = boardOf(
      'jumpers: { JP1: { is: Bus clock, positions: [1-2, 2-3] } }\ntables: { bus: { JP1 1-2: 33 MHz, JP1 2-3: 40 MHz } }',
      { conditions: [], settings: benchTree().settings, readings: [], faults: [] },
    );
    const answers = ['open: Board 7', 'JP1 2-3', 'single-rail'];
    const { settings } = recordOf(jobWith(benchTree(), { board, laterTrees: [] }, ...answers));
    expect(settings.map(({ value }) => value)).toEqual(['40 MHz (JP1 2-3)', 'single-rail']);
  });
});

describe('the record of what happened besides readings', () => {
  test('puts what was done all the same at the top, with why', () => {
    const record = recordOf(
      jobWith(wholeTree(), none, 'open: Board 9', '66', '66', 'none', 'override: looked at yesterday', '5'),
    );
    expect(record.overrides).toMatchObject([{ what: '5 V at the slot', why: 'looked at yesterday' }]);
    const page = recordMarkdown(record, 'owner');
    expect(page).toContain('although what must be seen first was not: looked at yesterday');
    expect(/^## (.*)$/m.exec(page)?.[1]).toBe('Done all the same');
  });

  test('tells conditions, changed jumpers, and that the board ran all of a sudden', () => {
    const record = recordWith(
      'arrange cards out',
      'bus := 60',
      'runs: pressed the memory home',
      'undone: fails again',
    );
    expect(record.events.map(({ text }) => text)).toEqual([
      'cards out',
      'Bus clock from the jumpers: changed to 60',
      'It runs. Touched last: pressed the memory home',
      'It runs. Touched last: pressed the memory home; with that undone it fails again',
    ]);
    expect(recordMarkdown(record, 'bench')).toContain('## Besides');
    expect(recordMarkdown(record, 'owner')).not.toContain('## Besides');
  });

  test('tells what readings say together', () => {
    const record = recordWith('go clocks', '41.4', '20.7', '30.1');
    expect(record.findings).toMatchObject([
      {
        reading: 'clock_factor',
        text: expect.stringMatching(/^Three readings show 0\.63 of what they should/),
      },
    ]);
    expect(recordMarkdown(record, 'bench')).toMatch(/## Together\n\n- Three readings show 0\.63/);
    expect(record.path).toEqual(['Beeps', 'Rail', 'Clocks', 'Crystal']);
  });

  test('names the trees that it was handed over to, and keeps their readings by their names', () => {
    const tree = { ...handingOver(benchTree(), 'overvoltage', 'whole-tree'), digest: 'a'.repeat(64) };
    const later = { board: null, laterTrees: [wholeTree()] };
    const answers = [...opened, 'nothing', '6', '4.9', 'hand over', '66', 'none', 'r_v5 = 150'];
    const record = recordOf(jobWith(tree, later, ...answers));
    expect(record.tree).toMatchObject({ id: 'bench-tree', digest: tree.digest });
    expect(record.laterTrees).toMatchObject([
      { id: 'whole-tree', title: 'No clock on the bus', why: 'handed over' },
    ]);
    expect(rowOf(record, 'pg')?.is).toBe('Power-good, one second after switch-on');
    expect(record.path.at(-1)).toBe('Rail');
    expect(recordMarkdown(record, 'bench')).toContain(', handed over to "No clock on the bus" (whole-tree, ');
  });
});
