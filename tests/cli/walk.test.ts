import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { problemsOfJob } from '../../engine/job/validate-job.ts';
import type { Job } from '../../engine/model/job.ts';
import recordSchema from '../../schema/record.schema.json' with { type: 'json' };
import { PaperBench } from '../helpers/paper-bench.ts';

const tree = 'tests/helpers/bench-tree.md';
const answers = (...texts: string[]): string[] => texts.flatMap((text) => ['--answer', text]);
const opening = ['bus := 33', 'cpu := 1', 'yes', 'acknowledge'];
const jobOf = (bench: PaperBench, path = 'a.job.json'): Job => JSON.parse(bench.files.get(path) ?? 'null');

describe('deadboard walk, scripted', () => {
  test('applies answers to the job in the file and prints where it stands', async () => {
    const bench = new PaperBench();
    const first = await bench.run([
      'walk',
      tree,
      '--job',
      'a.job.json',
      '--board',
      'Board 7',
      ...answers(...opening, 'nothing'),
    ]);
    expect(first.code).toBe(0);
    expect(first.out).toContain('== Rails ==');
    expect(first.out).toContain('CAUTION: A slipped tip kills a chip.');
    expect(first.out).toContain('Black lead on a mounting-hole ground.');
    expect(first.out).toContain('5 V at the slot (1 of 2)');
    expect(first.out).toContain('should be 4.75 V .. 5.25 V');
    expect(problemsOfJob(jobOf(bench))).toEqual([]);

    const second = await bench.run([
      'walk',
      '--job',
      'a.job.json',
      ...answers('v5 = 5,02 V', '4.9', 'acknowledge', '20,8M'),
    ]);
    expect(second.out).toContain('Fault: The crystal is cracked');
    expect(second.out).toMatch(/The supply gives no 5 V +by v5 good/);
    expect(second.out).toContain('Way: ask-first > rails > clock > no-clock');
    expect(jobOf(bench).entries.filter(({ kind }) => kind === 'read')).toMatchObject([
      { observation: { typed: 'nothing' } },
      {
        observation: {
          typed: '5,02 V',
          understood: { quantity: { value: '251/50', unit: 'V' } },
          bands: ['good'],
        },
      },
      { observation: { typed: '4.9' } },
      { observation: { typed: '20,8M', bands: ['slow'] } },
    ]);
  });

  test('prints the standing as JSON', async () => {
    const { out } = await new PaperBench().run([
      'walk',
      tree,
      '--json',
      ...answers(...opening, 'nothing', '5', '5', 'acknowledge'),
    ]);
    expect(JSON.parse(out)).toMatchObject({
      machine: 's-clock',
      section: { id: 'clock', kind: 'check' },
      asks: {
        ask: 'reading',
        reading: 'cpu_clk',
        expected: '32.67 MHz .. 33.33 MHz',
        because: [{ setting: 'bus', value: '33 MHz' }],
      },
      path: ['ask-first', 'rails', 'clock'],
    });
  });

  test('stops at the first refused answer with 1, and keeps those before it', async () => {
    const bench = new PaperBench();
    const { code, err } = await bench.run([
      'walk',
      tree,
      '--job',
      'a.job.json',
      ...answers(...opening, 'nothing', '5 X', '5'),
    ]);
    expect(code).toBe(1);
    expect(err).toMatch(/"5 X" was not taken/);
    expect(jobOf(bench).entries.at(-1)).toMatchObject({ kind: 'read', observation: { reading: 'story' } });
  });

  test('goes on with the tree a job was begun with', async () => {
    const bench = new PaperBench();
    await bench.run(['walk', tree, '--job', 'a.job.json', ...answers('bus := 33')]);
    const { err, code } = await bench.run([
      'walk',
      'trees/trees/no-post-586.md',
      '--job',
      'a.job.json',
      ...answers('cpu := 2'),
    ]);
    expect(code).toBe(0);
    expect(err).toBe('This job is walked with "Board held in reset" and goes on with that one');
    expect(jobOf(bench).tree.id).toBe('bench-tree');
  });

  test('leaves a job as it is when it is only looked at, and takes it up again with the first answer of a later day', async () => {
    const bench = new PaperBench();
    await bench.run(['walk', tree, '--job', 'a.job.json', ...answers('bus := 33')]);
    const job = jobOf(bench);
    const entries = job.entries.map((entry) => ({ ...entry, at: entry.at.replace(/^.{10}/, '2026-02-20') }));
    const old = JSON.stringify({ ...job, entries });
    bench.files.set('a.job.json', old);
    await bench.run(['walk', '--job', 'a.job.json', '--json']);
    expect(bench.files.get('a.job.json')).toBe(old);
    await bench.run(['walk', '--job', 'a.job.json', ...answers('cpu := 1')]);
    expect(jobOf(bench).entries.map(({ kind }) => kind)).toEqual(['opened', 'set', 'resumed', 'set']);
  });

  test('says what is wrong with a job file, and leaves it as it is', async () => {
    const bench = new PaperBench();
    bench.files.set('a.job.json', '{"format":1,"kind":"job"');
    const { code, err } = await bench.run(['walk', '--job', 'a.job.json', ...answers('yes')]);
    expect(code).toBe(2);
    expect(err).toMatch(/is not a job file/);
    expect(bench.files.get('a.job.json')).toBe('{"format":1,"kind":"job"');
    bench.files.set('b.job.json', '{"format":1,"kind":"job","id":"x","tree":{},"entries":[]}');
    expect((await bench.run(['walk', '--job', 'b.job.json', '--json'])).err).toMatch(
      /\/tree must have required property/,
    );
  });

  test('tells a full disk plainly and keeps what was there', async () => {
    const bench = new PaperBench();
    await bench.run(['walk', tree, '--job', 'a.job.json', ...answers('bus := 33')]);
    const before = bench.files.get('a.job.json');
    bench.full = true;
    const { code, err } = await bench.run(['walk', '--job', 'a.job.json', ...answers('cpu := 1')]);
    expect(code).toBe(2);
    expect(err).toMatch(/cannot write "a.job.json".*free some room/s);
    expect(bench.files.get('a.job.json')).toBe(before);
  });

  test('does not walk a tree with errors, and shows them', async () => {
    const bench = new PaperBench();
    bench.files.set('bad.md', '---\nformat: 1\n---\n\n## A\n');
    const { code, err } = await bench.run(['walk', 'bad.md', '--json']);
    expect(code).toBe(2);
    expect(err).toMatch(/bad\.md:\d+:\d+: error/);
  });
});

describe('deadboard walk, at a keyboard', () => {
  test('walks from the opening to a closed job, and keeps it in a new file', async () => {
    const bench = new PaperBench();
    const typed = [
      'open: Board 7; A. Owner; black screen',
      '33',
      'single',
      'yes',
      'acknowledge',
      '?',
      'nothing',
      'abc',
      '0.2',
      'faults',
      '0.1',
      'remedied: supply; bench supply = 12 EUR',
      '5.01',
      'runs',
      '4.9',
      'close',
      'quit',
    ];
    const { code, out } = await bench.run(['walk', tree], typed);
    expect(code).toBe(0);
    expect(out).toContain('"abc"');
    expect(out).toContain('0.2 V · none');
    expect(out).toContain('This job is closed, mended');
    const [path] = [...bench.files.keys()];
    expect(path).toMatch(/^bench-tree-\d+\.job\.json$/);
    expect(jobOf(bench, path).entries.at(-1)).toMatchObject({ kind: 'closed', mended: true });
  });

  test('loses nothing when the input ends in the middle', async () => {
    const bench = new PaperBench();
    await bench.run(
      ['walk', tree, '--job', 'a.job.json'],
      ['open: x', '33', '1', 'yes', 'acknowledge', 'nothing'],
    );
    const { out } = await bench.run(['walk', '--job', 'a.job.json'], ['5']);
    expect(out).toContain('== Rails ==');
    expect(jobOf(bench).entries.at(-1)).toMatchObject({ kind: 'read', observation: { reading: 'v5' } });
  });
});

describe('deadboard record', () => {
  const mended = async (): Promise<PaperBench> => {
    const bench = new PaperBench();
    await bench.run([
      'walk',
      tree,
      '--job',
      'a.job.json',
      ...answers(
        'open: Board 7; A. Owner; black screen',
        ...opening,
        'nothing',
        '0.2',
        '0.1',
        'note: plug was warm',
      ),
      ...answers(
        'todo: order a fuse',
        'remedied: plug; bench supply = 12 EUR',
        '5.01',
        'runs',
        '4.9',
        'close',
      ),
    ]);
    return bench;
  };

  test('prints one page for the owner: cause, parts, proof, open work', async () => {
    const { out, code } = await (await mended()).run(['record', 'a.job.json', '--for', 'owner']);
    expect(code).toBe(0);
    expect(out).toBe(`# Board 7: mended

- **Owner**: A. Owner
- **As brought in**: black screen
- **Symptom**: The fans turn, the screen stays black
- **On the bench**: 2026-03-01 to 2026-03-01
- **Bus clock set by the jumpers**: 33 MHz
- **Kind of CPU fitted**: single-rail

## What was wrong

- The supply gives no 5 V (plug), 2026-03-01

## Parts

- bench supply: 12 EUR

## Proof

- 5 V at the slot: 5.01 V, should be 4.75 V .. 5.25 V
- Last code on the POST card: runs, should be runs
- Power-good, one second after switch-on: 4.9 V, should be 4 V .. 5.25 V

## Still to do

- order a fuse`);
  });

  test('prints every reading, what is ruled out and the notes for the bench', async () => {
    const { out } = await (await mended()).run(['record', 'a.job.json']);
    expect(out).toMatch(
      /\| 7 \| .* \| 5 V at the slot \| 0\.2 V \| none \| 4\.75 V \.\. 5\.25 V \| wrong \|/,
    );
    expect(out).toMatch(/plug was warm/);
  });

  test('fits its schema as JSON', async () => {
    const { out } = await (await mended()).run(['record', 'a.job.json', '--json']);
    const validate = new Ajv2020().compile(recordSchema);
    expect(validate(JSON.parse(out)), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...JSON.parse(out), outcome: 'lost' })).toBe(false);
  });

  test('says what it needs', async () => {
    expect((await new PaperBench().run(['record'])).err).toMatch(/name one job file/);
    expect((await (await mended()).run(['record', 'a.job.json', '--for', 'police'])).err).toMatch(
      /"owner" or "bench"/,
    );
  });
});
