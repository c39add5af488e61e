import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { Entry } from '../../engine/model/entry.ts';
import type { Job } from '../../engine/model/job.ts';
import { machineValue, pathOf, replay } from '../../engine/run/index.ts';
import { benchTree } from '../helpers/bench.ts';
import { PaperBench } from '../helpers/paper-bench.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';
import { saveJobByKeys, takeInByKeys } from './helpers/job-files.ts';
import { tabAndPress } from './helpers/keyboard.ts';
import { mendingAnswers } from './helpers/mending-answers.ts';
import { showTrees } from './helpers/show-trees.ts';
import { standsAt } from './helpers/stands-at.ts';
import { storedEntries, timeless } from './helpers/stored-entries.ts';
import { type Room, usePlayer } from './helpers/use-player.ts';
import { sayByKeys, unopened, walkByKeys } from './helpers/walk-by-keys.ts';

const openRoom = usePlayer();
const folder = mkdtempSync(join(tmpdir(), 'deadboard-same-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const small = 'tests/helpers/bench-tree.md';
const crooked = [
  'open: Board 7; A. Owner; black since it was moved',
  'bus := 33',
  'cpu := ?',
  'yes',
  'acknowledge',
  'story = upgrade',
  'back',
  'same',
  'wait',
  'done',
  'note: smells of hot resin',
  'v5 = 4,98 V',
  'cannot read: no probe left',
  'as if clock',
  'acknowledge',
  'cpu_clk = 16,2M',
  'back',
  'retake cpu_clk = 20 MHz',
  'todo: order a clock chip',
  'bus := 40 MHz',
  'cpu_clk = 20 MHz',
  'remedied: Y1; crystal 14.3 MHz = 3.20 EUR; solder',
  'cpu_clk = 20,1',
  'post_code = none',
  'decline: no chip here',
  'go rails',
  'again cpu_clk = 20.2',
  'v5 = 4.98 V, running now',
  'strike 27: wrong pin',
  'pg = 3100 mV',
  'remedied: J2',
  'pg = 4.9',
  'post_code = runs',
  'cpu_clk = 40',
  'todo done 19',
  'correct bus := 39.9 MHz',
  'close: keep it dry',
];

const scripted = (answers: readonly string[]): readonly string[] =>
  answers.flatMap((text) => ['--answer', text]);
const saidIn = (entries: readonly Entry[]) => entries.map(timeless);
const showSmallTree = (morning?: string): Promise<Room> =>
  openRoom({
    prepare: (context) => showTrees(context, benchTree()),
    ...(morning !== undefined && { morning }),
  });

/** A job as `deadboard walk` leaves it, and the text of its file. */
async function atTerminal(answers: readonly string[]): Promise<{ job: Job; text: string }> {
  const paper = new PaperBench();
  const ran = await paper.run(['walk', small, '--job', 'board.json', ...scripted(answers)]);
  expect(ran.err).toBe('');
  const text = paper.files.get('board.json') ?? '';
  return { job: JSON.parse(text), text };
}

/** Everything in a record but its job's name and its hours. */
async function recordOfFile(text: string): Promise<unknown> {
  const paper = new PaperBench();
  paper.files.set('taken.json', text);
  const ran = await paper.run(['record', 'taken.json', '--json']);
  expect(ran).toMatchObject({ code: 0, err: '' });
  return JSON.parse(ran.out, (key, value) =>
    ['at', 'opened', 'closed', 'job'].includes(key) ? undefined : value,
  );
}

test('a crooked walk stands at the same machine value in the browser and at the terminal after every answer, and makes the same job', async () => {
  const { page } = await showSmallTree();
  const paper = new PaperBench();
  let session = unopened(benchTree());
  for (const text of crooked) {
    const ran = await paper.run(['walk', small, '--job', 'board.json', '--json', '--answer', text]);
    session = await walkByKeys(page, session, [text]);
    const { machine, entries } = JSON.parse(ran.out);
    expect({ text, machine, entries }).toEqual({
      text,
      machine: machineValue(session),
      entries: (await storedEntries(page)).length,
    });
  }
  await tabAndPress(page, 'Back to the job');
  await standsAt(page, session);

  const saved = await saveJobByKeys(page);
  const there = paper.files.get('board.json') ?? '';
  const [job, terminal]: readonly [Job, Job] = [JSON.parse(saved), JSON.parse(there)];
  expect(saidIn(job.entries)).toEqual(saidIn(terminal.entries));
  expect(job.tree).toEqual(terminal.tree);
  expect(await recordOfFile(saved)).toEqual(await recordOfFile(there));
});

test('the built command and the browser make the same job of a shipped tree', async () => {
  const { page } = await openRoom();
  const tree = shippedTrees.find(({ id }) => id === 'no-post-586')?.tree as CompiledTree;
  const answers = mendingAnswers(tree, 'short_io', {
    open: 'open: Grey tower; A. Keeper; a bang, then nothing',
    remedied: 'remedied: beside the socket; tantalum bead 22 µF = 0,40 EUR',
    close: 'close: runs again',
  });
  const file = join(folder, 'tower.json');
  const built = execFileSync(
    process.execPath,
    [
      'dist/cli/deadboard.js',
      'walk',
      'trees/trees/no-post-586.md',
      '--job',
      file,
      '--json',
      ...scripted(answers),
    ],
    { encoding: 'utf8' },
  );

  const session = await walkByKeys(page, unopened(tree), answers);

  const job: Job = JSON.parse(readFileSync(file, 'utf8'));
  expect(saidIn(await storedEntries(page))).toEqual(saidIn(job.entries));
  expect(JSON.parse(built).machine).toEqual(machineValue(session));
});

test("a job of the terminal's is taken in by the bench, goes on there, and comes back to the terminal", async () => {
  const { page } = await showSmallTree('2026-03-02T09:00:00Z');
  const begun = crooked.slice(0, 13);
  const terminal = await atTerminal(begun);

  expect(await takeInByKeys(page, 'board.json', terminal.text)).toBe('"Board 7" is on the bench');
  await tabAndPress(page, 'Board 7');
  await page.getByRole('heading', { name: 'Is the symptom still the same?' }).waitFor();
  const there = replay(terminal.job.tree, terminal.job.entries);
  const resumed = await sayByKeys(page, there, 'resume');
  await standsAt(page, resumed);
  const session = await walkByKeys(page, resumed, [
    'acknowledge',
    'as if clock',
    'acknowledge',
    'cpu_clk = 12',
  ]);

  const paper = new PaperBench();
  paper.files.set('back.json', await saveJobByKeys(page));
  const ran = await paper.run(['walk', '--job', 'back.json', '--json']);
  expect(JSON.parse(ran.out)).toMatchObject({
    machine: machineValue(session),
    path: pathOf(session.position).map(({ id }) => id),
  });
});

test('a file with a longer walk of the same job adds what the bench lacks; one that parted stands beside it', async () => {
  const { page } = await showSmallTree();
  const whole = await atTerminal(crooked.slice(0, 13));
  const cut = (entries: readonly Entry[]): string => JSON.stringify({ ...whole.job, entries });
  const { entries } = whole.job;

  expect(await takeInByKeys(page, 'early.json', cut(entries.slice(0, 9)))).toBe('"Board 7" is on the bench');
  expect(await takeInByKeys(page, 'late.json', cut(entries))).toBe(
    '"Board 7" got 4 more entries from this file',
  );
  expect(await takeInByKeys(page, 'old.json', cut(entries.slice(0, 5)))).toMatch(/on the bench already/);
  const other: Entry = { kind: 'note', text: 'not here', at: entries[8]?.at ?? '' };
  expect(await takeInByKeys(page, 'other.json', cut([...entries.slice(0, 8), other]))).toMatch(/as a copy/);

  expect(await storedEntries(page, whole.job.id)).toEqual(entries);
  expect(await page.getByRole('link', { name: 'Board 7', exact: true }).count()).toBe(2);
});
