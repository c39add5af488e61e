import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { problemsOfJob } from '../../engine/job/validate-job.ts';
import type { Job } from '../../engine/model/job.ts';
import { PaperBench } from '../helpers/paper-bench.ts';

const answers = (...texts: string[]): string[] => texts.flatMap((text) => ['--answer', text]);
const jobOf = (bench: PaperBench): Job => JSON.parse(bench.files.get('a.job.json') ?? 'null');
const kinds = (bench: PaperBench) => jobOf(bench).entries.map(({ kind }) => kind);

const tree = 'tests/helpers/bench-tree.md';
const whole = 'tests/helpers/whole-tree.md';
const rail = 'tests/fixtures/compile/short-on-a-rail/trees/dead-rail.md';
const meter = 'bench meter (meter): 6 V ± (0.5 % + 2) at 10 mV';
const job = ['--job', 'a.job.json'];
const opening = ['bus := 33', 'cpu := 1', 'yes', 'acknowledge'];

const sheet = `---
format: 1
kind: board
title: Plover P2
boards: [486]
settings: { bus: 40 MHz }
jumpers: { JP1: { is: Bus clock, positions: [1-2, 2-3] } }
tables: { bus: { JP1 1-2: 33 MHz, JP1 2-3: 40 MHz } }
---

# Plover P2
`;

describe('deadboard walk --instruments', () => {
  const withFile = (text: string): PaperBench => {
    const bench = new PaperBench();
    bench.files.set('bench.txt', text);
    return bench;
  };
  const run = (bench: PaperBench, ...rest: string[]) =>
    bench.run(['walk', tree, ...job, '--instruments', 'bench.txt', ...rest]);

  test('notes what is at the bench when the job is opened, once', async () => {
    const bench = withFile(`${meter}\n\nscope (scope): 100 MHz ± 25 ppm\n`);
    await run(bench, ...answers(...opening, 'nothing'));
    expect(kinds(bench).slice(0, 2)).toEqual(['opened', 'equipped']);
    await run(bench, ...answers('5'));
    expect(kinds(bench).filter((kind) => kind === 'equipped')).toHaveLength(1);
    expect(problemsOfJob(jobOf(bench))).toEqual([]);
  });

  test('does so after the opening at a keyboard', async () => {
    const bench = withFile(meter);
    await bench.run(['walk', tree, ...job, '--instruments', 'bench.txt'], ['open: Board 7', '33']);
    expect(kinds(bench)).toEqual(['opened', 'equipped', 'set']);
  });

  test('tells how far off a value may be, and what would settle it', async () => {
    const { out } = await run(withFile(meter), ...answers(...opening, 'nothing', '4.76', '4.9'));
    expect(out).toContain(
      'TOO CLOSE TO CALL: 5 V at the slot: 4.76 V ± 43.8 mV (bench meter), so low or\ngood.',
    );
    expect(out).toContain('Type the value once more, or back, or go on as if:');
    expect(out).toContain('as if no-supply   (v5 low');
    expect(out).toMatch(/v5 +4\.76 V ± 43\.8 mV +low or good/);
  });

  test.each([
    [
      'what is no instrument',
      `${meter}\nmy old meter\n`,
      /"bench.txt", line 2: .*does not begin with a name/,
    ],
    ['the same name twice', `${meter}\n${meter}\n`, /line 2: another instrument is called "bench meter"/],
  ])('refuses %s with its line', async (_, text, message) => {
    const bench = withFile(text);
    const { code, err } = await run(bench, ...answers('33'));
    expect(code).toBe(2);
    expect(err).toMatch(message);
    expect(bench.files.has('a.job.json')).toBe(false);
  });
});

describe('deadboard walk --board-sheet', () => {
  const run = async (...rest: string[]) => {
    const bench = new PaperBench();
    bench.files.set('p2.md', sheet);
    return { bench, ran: await bench.run(['walk', tree, ...job, '--board-sheet', 'p2.md', ...rest]) };
  };

  test('keeps the sheet with the job, and takes jumpers for settings', async () => {
    const { bench, ran } = await run('--json', ...answers('JP1 2-3'));
    expect(jobOf(bench)).toMatchObject({
      board: { title: 'Plover P2' },
      entries: [{}, { kind: 'set', typed: 'JP1 2-3', value: { value: '40000000' } }],
    });
    expect(JSON.parse(ran.out)).toMatchObject({ sheet: { id: 'p2' }, settings: { bus: { unit: 'MHz' } } });
    expect(problemsOfJob(jobOf(bench))).toEqual([]);
  });

  test('tells what a setting usually is on this board, and the jumpers that tell it', async () => {
    const { ran } = await run(...answers('note: no sticker'));
    expect(ran.out).toContain(`Bus clock set by the jumpers, in MHz? (? if not known)
  usually 40 MHz
  the positions of JP1 do as well`);
  });

  test('of a job that was begun without one is told and left aside', async () => {
    const bench = new PaperBench();
    bench.files.set('p2.md', sheet);
    await bench.run(['walk', tree, ...job, ...answers('bus := 33')]);
    const { err } = await bench.run(['walk', ...job, '--board-sheet', 'p2.md', ...answers('cpu := 1')]);
    expect(err).toContain('This job goes on without a board sheet as it was begun');
    expect(jobOf(bench).board).toBeNull();
  });
});

describe('deadboard walk, into another tree', () => {
  const atHandOver = ['8', 'yes', '6', '3.3'];

  test('finds it beside the first one and keeps it with the job', async () => {
    const bench = new PaperBench();
    const { out } = await bench.run(['walk', rail, ...job, ...answers(...atHandOver)]);
    expect(out).toContain('This job goes on with "Memory does not answer".');
    expect(jobOf(bench).laterTrees.map(({ id }) => id)).toEqual(['memory']);
    // Without naming any tree: the job carries it along.
    const next = await bench.run(['walk', ...job, '--json', ...answers('hand over')]);
    expect(JSON.parse(next.out)).toMatchObject({
      tree: { id: 'memory' },
      section: { id: 'banks' },
      known: [],
    });
    expect(problemsOfJob(jobOf(bench))).toEqual([]);
  });

  test('asks for its file where it is not beside, and goes on once that is named', async () => {
    const bench = new PaperBench();
    await bench.run(['walk', rail, ...job, ...answers(...atHandOver.slice(0, 3))]);
    const { out } = await bench.run(['walk', ...job, ...answers('3.3')]);
    expect(out).toContain('deadboard walk memory.md --job FILE');
    const memory = rail.replace('dead-rail', 'memory');
    const { code, err } = await bench.run(['walk', memory, ...job, ...answers('hand over', 'dead')]);
    expect([code, err]).toEqual([0, '']);
    expect(kinds(bench).slice(-2)).toEqual(['tree', 'read']);
  });
});

describe('deadboard walk --newer', () => {
  const begun = async (): Promise<PaperBench> => {
    const bench = new PaperBench();
    await bench.run(['walk', tree, ...job, ...answers(...opening, 'nothing', '5')]);
    const text = readFileSync(tree, 'utf8').replace('4.75 V < good', '4.6 V < good');
    bench.files.set('bench-tree.md', text);
    return bench;
  };

  test('is offered where another version is named, and changes nothing by itself', async () => {
    const bench = await begun();
    const { err } = await bench.run(['walk', 'bench-tree.md', ...job, ...answers('4.9')]);
    expect(err).toContain('--newer moves it to the one that you named');
    expect(jobOf(bench).laterTrees).toEqual([]);
  });

  test('moves the job to the version that is named, once', async () => {
    const bench = await begun();
    const { out, err } = await bench.run(['walk', 'bench-tree.md', ...job, '--newer', '--json']);
    expect(err).toBe('This job goes on with the newer version of "Board held in reset"');
    expect(jobOf(bench)).toMatchObject({ laterTrees: [{ id: 'bench-tree' }] });
    expect(JSON.parse(out).tree.digest).toBe(jobOf(bench).laterTrees[0]?.digest);
    expect(kinds(bench).at(-1)).toBe('tree');
    const { length } = kinds(bench);
    await bench.run(['walk', 'bench-tree.md', ...job, '--newer', '--json']);
    expect(kinds(bench)).toHaveLength(length);
  });

  test.each([
    ['another tree', [whole, ...job], /"whole-tree" is no version of it/],
    ['no tree', job, /name the newer tree/],
  ])('needs a version of the same tree, not %s', async (_, args, message) => {
    const { code, err } = await (await begun()).run(['walk', ...args, '--newer']);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });
});

describe('deadboard walk, a job of the version before', () => {
  test('goes on where it stood', async () => {
    const bench = new PaperBench();
    bench.files.set('a.job.json', readFileSync('tests/fixtures/jobs/open.job.json', 'utf8'));
    const { code, out } = await bench.run(['walk', ...job, '--json', ...answers('50')]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ section: { id: 'sockets' } });
    expect(problemsOfJob(jobOf(bench))).toEqual([]);
  });
});

describe('deadboard walk, the page behind it', () => {
  test('keeps within the width of the terminal, however many faults are ruled out', async () => {
    const shipped = 'trees/trees/no-post-586.md';
    const typed = ['dual-rail', '2.8', '3.3', '66.6', '3.3', 'at', 'yes', 'acknowledge', 'moved', 'leaked'];
    const { out } = await new PaperBench().run(['walk', shipped, ...answers(...typed)]);
    expect(out).toContain('Ruled out');
    expect(out.split('\n').filter((line) => [...line].length > 80)).toEqual([]);
  });

  test('names the reading by its own words where a procedure is given it', async () => {
    const { out } = await new PaperBench().run(['walk', rail, ...answers('8', 'yes', '2.1')]);
    expect(out).toContain('Follow "Short on a rail", with\n  the rail that is down: 5 V at the slots (v5)');
  });
});

describe('deadboard walk --json', () => {
  const asked = async (path: string, ...typed: string[]) => {
    const { out } = await new PaperBench().run(['walk', path, '--json', ...answers(...typed)]);
    return JSON.parse(out);
  };
  const start = ['66', '66', 'none'];

  test('tells what must be seen first', async () => {
    expect((await asked(whole, ...start)).asks).toMatchObject({
      ask: 'held',
      reading: 'v5',
      lacking: [{ reading: 'r_v5', bands: ['good'], known: null, take: ['r_v5'] }],
    });
  });

  test('tells the conditions that the board must be in, and is in', async () => {
    const standing = await asked(whole, ...start, 'r_v5 = 150', 'go rail-without-cards');
    expect(standing).toMatchObject({
      conditions: { cards: 'in', cpu: 'in' },
      asks: { ask: 'arrange', changes: [{ condition: 'cards', now: 'in', wanted: 'out' }] },
    });
  });

  test('tells the procedure that is followed, and what it is given', async () => {
    expect((await asked(rail, '8', 'yes', '2.1')).asks).toMatchObject({
      ask: 'call',
      procedure: 'short-on-a-rail',
      given: [{ value: 'v5' }, { value: 'least * 2' }],
    });
  });

  test('tells the ways that are open and what would settle it', async () => {
    const typed = [`instruments: ${meter}; 4.8 V ± (0.05 % + 2) at 1 mV`, 'v5 = 4.79'];
    expect((await asked(whole, ...start, 'r_v5 = 150', ...typed)).asks).not.toMatchObject({
      ask: 'too-close',
    });
    const coarse = await asked(whole, ...start, 'r_v5 = 150', `instruments: ${meter}`, 'v5 = 4.76');
    expect(coarse.asks).toMatchObject({
      ask: 'too-close',
      ways: [{ target: 'marking' }, { target: 'pull-the-cards' }],
      unsettled: [{ reading: 'v5', bands: ['low', 'good'] }],
    });
  });

  test('tells what readings say together', async () => {
    const standing = await asked(whole, ...start, 'go clocks', '41.4', '20.7', '30.1');
    expect(standing.findings).toMatchObject([
      { reading: 'clock_factor', text: expect.stringMatching('0.63') },
    ]);
  });
});
