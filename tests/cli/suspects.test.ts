import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import recordSchema from '../../schema/record.schema.json' with { type: 'json' };
import { PaperBench } from '../helpers/paper-bench.ts';

const tree = 'tests/helpers/bench-tree.md';
const answers = (...texts: string[]): string[] => texts.flatMap((text) => ['--answer', text]);
const opening = ['bus := 33', 'cpu := 1', 'yes', 'acknowledge'];
const keyboard = ['open: Board 7', '33', 'single', 'yes', 'acknowledge'];

/** What was printed after the last prompt for `word`. */
const after = (out: string, title: string): string => out.slice(out.lastIndexOf(`\n${title}`) + 1);

describe('the suspects at the terminal', () => {
  test('are told with their shares and the readings that moved them', async () => {
    const { out } = await new PaperBench().run(
      ['walk', tree],
      [...keyboard, 'nothing', '0.2', 'suspects', 'quit'],
    );
    const told = after(out, 'Suspects');
    const [, first = '', moved = ''] = told.split('\n');
    expect(first).toMatch(/^ {2}> ?99 %|^ {2} {0,3}\d{1,2} %/);
    expect(first).toContain('The supply gives no 5 V');
    expect(moved).toMatch(/^ +.*5 V at the slot none ×\d/);
  });

  test('add up to the whole', async () => {
    const { out } = await new PaperBench().run(['walk', tree, '--json', ...answers(...opening, 'nothing')]);
    const { suspects } = JSON.parse(out);
    const sum = suspects.ranked.reduce((all: number, { share }: { share: number }) => all + share, 0);
    expect(sum + suspects.others.share).toBeCloseTo(1, 9);
    expect(suspects.ranked.filter(({ faults }: { faults: string[] }) => faults.length === 0)).toHaveLength(1);
    const shares = suspects.ranked.map(({ share }: { share: number }) => share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
  });

  test('are the same on the page of a scripted walk, and not told of a closed job', async () => {
    const bench = new PaperBench();
    const run = (...more: string[]) => bench.run(['walk', tree, '--job', 'a.job.json', ...answers(...more)]);
    expect((await run(...opening, 'nothing')).out).toContain('\nSuspects\n');
    expect((await run('close not mended: no time')).out).not.toContain('\nSuspects\n');
  });
});

describe('readings that fit no fault', () => {
  const unfit = 'These readings fit no fault in this tree.';

  test('are told first, before the section and before the suspects', async () => {
    const bench = new PaperBench();
    const odd = ['nothing', '5', '5', 'acknowledge', '66', 'suspects', 'quit'];
    const { out } = await bench.run(['walk', tree], [...keyboard, ...odd]);
    expect(after(out, 'Suspects').split('\n')[1]).toContain(unfit);
    const page = await bench.run(['walk', ...[...bench.files.keys()].flatMap((path) => ['--job', path])]);
    expect(page.out.startsWith(unfit)).toBe(true);
  });

  test('are not told while some fault explains them', async () => {
    const { out } = await new PaperBench().run(
      ['walk', tree],
      [...keyboard, 'nothing', '0.2', 'suspects', 'quit'],
    );
    expect(out).not.toContain(unfit);
  });
});

describe('the best next check at the terminal', () => {
  test('is told with its minutes, its reason and what is left', async () => {
    const { out } = await new PaperBench().run(['walk', tree], [...keyboard, 'next', 'quit']);
    const told = after(out, 'Best next');
    expect(told).toMatch(/\(\w+\): \d+ minutes?/);
    expect(told).toMatch(/likely to show /);
    expect(told).toMatch(/ under: /);
    expect(told).toMatch(/(about|at least) \d+ minutes? until one suspect is left/);
  });

  test('can be gone to and left again', async () => {
    const { out } = await new PaperBench().run(['walk', tree, '--json', ...answers(...opening, 'nothing')]);
    const { next, section } = JSON.parse(out);
    const best = next.ranked[0];
    const bench = new PaperBench();
    const off = await bench.run([
      'walk',
      tree,
      '--json',
      ...answers(...opening, 'nothing', `detour ${best.reading}`),
    ]);
    expect(JSON.parse(off.out).section.id).toBe(best.section);
    const back = await bench.run([
      'walk',
      tree,
      '--json',
      ...answers(...opening, 'nothing', `detour ${best.reading}`, 'return'),
    ]);
    expect(JSON.parse(back.out).section).toEqual(section);
  });

  test('is nothing once the board is mended', async () => {
    const mended = ['nothing', '0.2', '0.1', 'remedied: supply', '5.01', 'runs', '4.9', 'close'];
    const { out } = await new PaperBench().run(['walk', tree], [...keyboard, ...mended, 'next', 'quit']);
    expect(out).toContain('Best next: nothing that can be taken now would tell more');
  });
});

describe('the record of a job that was closed without a proof', () => {
  const closed = async (...more: string[]) => {
    const bench = new PaperBench();
    const { code } = await bench.run(['walk', tree, '--job', 'a.job.json', ...answers(...opening, ...more)]);
    expect(code).toBe(0);
    const owner = await bench.run(['record', 'a.job.json', '--for', 'owner']);
    const json = await bench.run(['record', 'a.job.json', '--json']);
    return { owner: owner.out, record: JSON.parse(json.out) };
  };

  test('says what it may be, to the owner too', async () => {
    const { owner, record } = await closed('nothing', '0.2', 'close not mended: no supply at hand');
    expect(owner).toMatch(/## What it may be\n\n- The supply gives no 5 V.*: > 99 %|: \d+ %/);
    expect(record.suspects).toMatchObject({ fits: true });
    expect(record.suspects.ranked[0].faults).toHaveLength(1);
    expect(record.suspects.ranked[0].moved).toMatch(/none ×/);
    expect(new Ajv2020({ strict: false }).validate(recordSchema, record)).toBe(true);
  });

  test('says nothing of suspects where a fault was proved', async () => {
    const { owner, record } = await closed(
      'nothing',
      '0.2',
      '0.1',
      'remedied: supply',
      '5.01',
      'runs',
      '4.9',
      'close',
    );
    expect(owner).not.toContain('What it may be');
    expect(record.suspects).toBeNull();
    expect(record.outcome).toBe('mended');
  });
});
