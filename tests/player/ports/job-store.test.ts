import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { openDB } from 'idb';
import { describe, expect, test } from 'vitest';
import { upgradeJob } from '../../../engine/job/upgrade-job.ts';
import type { CompiledBoard } from '../../../engine/model/compiled-board.ts';
import type { Entry } from '../../../engine/model/entry.ts';
import type { Job } from '../../../engine/model/job.ts';
import { idbJobStore } from '../../../player/ports/idb-job-store.ts';
import type { JobStore, JobSummary } from '../../../player/ports/job-store.ts';
import { memoryJobStore } from '../../../player/ports/memory-job-store.ts';
import { benchTree } from '../../helpers/bench.ts';

let bench = 0;
const stores: readonly (readonly [string, () => JobStore])[] = [
  ['memoryJobStore()', memoryJobStore],
  [
    'idbJobStore()',
    () => idbJobStore({ name: `bench ${bench++}`, contentKey: async (content) => JSON.stringify(content) }),
  ],
];

const tree = benchTree();
const opened: Entry = {
  kind: 'opened',
  board: 'Board 7',
  owner: '',
  story: '',
  at: '2031-04-05T10:00:00+02:00',
};
const note = (text: string): Entry => ({ kind: 'note', text, at: '2031-04-05T10:01:00+02:00' });
const jobOf = (id: string, entries: readonly Entry[] = [opened]): Job => ({
  format: 1,
  kind: 'job',
  id,
  tree,
  laterTrees: [],
  board: null,
  entries,
});
const summaryOf = (id: string, entries: number, at = '2031-04-05T10:00:00+02:00'): JobSummary => ({
  id,
  board: 'Board 7',
  owner: '',
  symptom: tree.symptom,
  finding: null,
  standsAt: null,
  ruledOut: 0,
  possible: 0,
  todo: [],
  state: 'open',
  entries,
  at,
});
const sheetOf = (id: string): CompiledBoard => ({
  ...{
    format: 1,
    kind: 'compiled-board',
    id,
    title: 'Kestrel K5',
    boards: ['486'],
    digest: id,
    settings: {},
  },
  ...{ jumpers: [], tables: [], fittings: [], readings: [], pictures: [], points: {}, references: [] },
});
const done = { ok: true, value: undefined };

describe.each(stores)('%s', (_name, open) => {
  test('gives back a job as it was put in', async () => {
    const store = open();
    expect(await store.create(jobOf('a'), summaryOf('a', 1))).toEqual(done);
    expect(await store.load('a')).toEqual({ ok: true, value: jobOf('a') });
  });

  test('adds entries behind those that are there', async () => {
    const store = open();
    await store.create(jobOf('a'), summaryOf('a', 1));
    expect(await store.append('a', 1, [note('one'), note('two')], summaryOf('a', 3))).toEqual(done);
    expect(await store.append('a', 3, [note('three')], summaryOf('a', 4))).toEqual(done);
    const job = await store.load('a');
    expect(job.ok && job.value.entries).toEqual([opened, note('one'), note('two'), note('three')]);
  });

  test('keeps more than ten entries in their order', async () => {
    const store = open();
    await store.create(jobOf('a'), summaryOf('a', 1));
    for (let held = 1; held < 15; held += 1) {
      await store.append('a', held, [note(String(held))], summaryOf('a', held + 1));
    }
    const job = await store.load('a');
    expect(job.ok && job.value.entries.slice(1).map((entry) => entry.kind === 'note' && entry.text)).toEqual(
      Array.from({ length: 14 }, (_, index) => String(index + 1)),
    );
  });

  test('refuses a writer who does not know all entries, and changes nothing', async () => {
    const store = open();
    await store.create(jobOf('a'), summaryOf('a', 1));
    await store.append('a', 1, [note('mine')], summaryOf('a', 2));
    const refused = await store.append('a', 1, [note('theirs')], summaryOf('a', 2));
    expect(refused).toEqual({ ok: false, problem: { kind: 'moved-on', entries: 2 } });
    const job = await store.load('a');
    expect(job.ok && job.value.entries).toEqual([opened, note('mine')]);
  });

  test('lets one of two writers through who come at the same time, and tells the other', async () => {
    const store = open();
    await store.create(jobOf('a'), summaryOf('a', 1));
    const both = await Promise.all(
      ['one', 'two'].map((text) => store.append('a', 1, [note(text)], summaryOf('a', 2))),
    );
    expect(both.filter(({ ok }) => ok)).toHaveLength(1);
    const job = await store.load('a');
    expect(job.ok && job.value.entries).toHaveLength(2);
  });

  test('does not put a job over another one', async () => {
    const store = open();
    await store.create(jobOf('a', [opened, note('kept')]), summaryOf('a', 2));
    expect(await store.create(jobOf('a'), summaryOf('a', 1))).toMatchObject({
      ok: false,
      problem: { kind: 'moved-on' },
    });
    const job = await store.load('a');
    expect(job.ok && job.value.entries).toHaveLength(2);
  });

  test('keeps the board sheet and the later trees of a job, through every entry', async () => {
    const store = open();
    const board = sheetOf('k5');
    const job = { ...jobOf('a'), board, laterTrees: [{ ...tree, digest: 'newer' }] };
    await store.create(job, summaryOf('a', 1));
    await store.append('a', 1, [note('one')], summaryOf('a', 2));
    const loaded = await store.load('a');
    expect(loaded.ok && loaded.value).toEqual({ ...job, entries: [opened, note('one')] });
  });

  test('keeps one more tree with a job once, and refuses it for a job that is not there', async () => {
    const store = open();
    await store.create(jobOf('a'), summaryOf('a', 1));
    const other = { ...tree, id: 'other', digest: 'other' };
    expect(await store.addTree('a', other)).toEqual(done);
    expect(await store.addTree('a', other)).toEqual(done);
    const loaded = await store.load('a');
    expect(loaded.ok && loaded.value.laterTrees).toEqual([other]);
    expect(await store.append('a', 1, [note('one')], summaryOf('a', 2))).toEqual(done);
    expect(await store.addTree('none', other)).toEqual({ ok: false, problem: { kind: 'gone' } });
  });

  test('says that a job is not there', async () => {
    const store = open();
    expect(await store.load('none')).toEqual({ ok: false, problem: { kind: 'gone' } });
    expect(await store.append('none', 0, [opened], summaryOf('none', 1))).toEqual({
      ok: false,
      problem: { kind: 'gone' },
    });
  });

  test('lists the jobs, the newest work first, whatever the offset of their clocks', async () => {
    const store = open();
    await store.create(jobOf('old'), summaryOf('old', 1, '2031-04-05T10:00:00+02:00'));
    await store.create(jobOf('new'), summaryOf('new', 1, '2031-04-05T09:00:00+00:00'));
    const list = await store.list();
    expect(list.ok && list.value.map(({ id }) => id)).toEqual(['new', 'old']);
  });
});

test('idbJobStore() says that the browser keeps no data when the database cannot be opened', async () => {
  const original = indexedDB.open;
  indexedDB.open = () => {
    throw new DOMException('The operation is insecure', 'SecurityError');
  };
  try {
    const store = idbJobStore({ name: 'closed', contentKey: async () => 'key' });
    expect(await store.list()).toMatchObject({ ok: false, problem: { kind: 'unavailable' } });
  } finally {
    indexedDB.open = original;
  }
});

test('idbJobStore() opens what an older bench kept, and goes on with it', async () => {
  const name = 'older bench';
  const db = await openDB(name, 1, {
    upgrade(older) {
      older.createObjectStore('trees');
      older.createObjectStore('jobs', { keyPath: 'id' });
      older.createObjectStore('entries');
    },
  });
  await db.put('trees', tree, 'key');
  await db.put('jobs', { ...summaryOf('a', 1), treeKey: 'key' });
  await db.put('entries', opened, ['a', 0]);
  db.close();
  const store = idbJobStore({ name, contentKey: async (content) => content.digest });
  expect(await store.load('a')).toEqual({ ok: true, value: jobOf('a') });
  expect(await store.append('a', 1, [note('one')], summaryOf('a', 2))).toEqual(done);
  expect(await store.addTree('a', { ...tree, digest: 'newer' })).toEqual(done);
  const job = await store.load('a');
  expect(job.ok && [job.value.entries.length, job.value.laterTrees.length]).toEqual([2, 1]);
});

test('idbJobStore() fills what the trees and readings of an older bench lack', async () => {
  const old: Job = JSON.parse(readFileSync('tests/fixtures/jobs/open.job.json', 'utf8'));
  const store = idbJobStore({ name: 'older job', contentKey: async (content) => content.digest });
  await store.create({ ...old, laterTrees: [], board: null }, summaryOf(old.id, old.entries.length));
  expect(await store.load(old.id)).toEqual({ ok: true, value: upgradeJob(old) });
});
