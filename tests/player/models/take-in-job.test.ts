import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../../engine/model/job.ts';
import { takeInJob } from '../../../player/models/take-in-job.ts';
import type { Ports } from '../../../player/ports/ports.ts';
import { benchTree, opened, walk } from '../../helpers/bench.ts';
import { benchPorts } from '../helpers/bench-ports.ts';

const tree = benchTree();
const jobOf = (...answers: string[]): Job => ({
  format: 1,
  kind: 'job',
  id: 'kept',
  tree,
  laterTrees: [],
  board: null,
  entries: walk(tree, ...opened, ...answers).entries,
});
const fileOf = (job: unknown) => ({ name: 'a job.json', text: JSON.stringify(job) });

async function onBench(ports: Ports): Promise<readonly number[]> {
  const list = await ports.store.list();
  return list.ok ? list.value.map(({ entries }) => entries) : [];
}

describe('takeInJob()', () => {
  test('puts a job on the bench as it was saved', async () => {
    const ports = benchPorts();
    const job = jobOf('nothing', '5.02');
    expect(await takeInJob(ports, fileOf(job))).toBe('"Board 7" is on the bench');
    expect(await ports.store.load('kept')).toEqual({ ok: true, value: job });
  });

  test('adds only what the bench does not have yet', async () => {
    const ports = benchPorts();
    await takeInJob(ports, fileOf(jobOf('nothing')));
    expect(await takeInJob(ports, fileOf(jobOf('nothing', '5.02', '4.9')))).toContain('2 more entries');
    expect(await onBench(ports)).toEqual([jobOf('nothing', '5.02', '4.9').entries.length]);
  });

  test('takes in a job file of the version before, once', async () => {
    const ports = benchPorts();
    const file = { name: 'old.json', text: readFileSync('tests/fixtures/jobs/mended.job.json', 'utf8') };
    expect(await takeInJob(ports, file)).toBe('"Board 7" is on the bench');
    expect(await takeInJob(ports, file)).toContain('already');
    expect(await onBench(ports)).toHaveLength(1);
  });

  test('changes nothing when the bench has more', async () => {
    const ports = benchPorts();
    await takeInJob(ports, fileOf(jobOf('nothing', '5.02')));
    expect(await takeInJob(ports, fileOf(jobOf('nothing')))).toContain('already');
    expect(await onBench(ports)).toEqual([jobOf('nothing', '5.02').entries.length]);
  });

  test('puts a job that went another way beside the one on the bench', async () => {
    const ports = benchPorts();
    await takeInJob(ports, fileOf(jobOf('nothing', '5.02')));
    expect(await takeInJob(ports, fileOf(jobOf('nothing', '0.1')))).toContain('as a copy');
    expect(await onBench(ports)).toHaveLength(2);
  });

  test.each([
    ['text that is no JSON', { name: 'a.txt', text: 'hello' }],
    ['another kind of file', fileOf({ kind: 'tree' })],
    ['a job without its tree', fileOf({ format: 1, kind: 'job', id: 'x', entries: [] })],
    [
      'a job with a strange entry',
      fileOf({ ...jobOf(), entries: [{ kind: 'exploded', at: '2031-04-05T10:00:00+02:00' }] }),
    ],
  ])('refuses %s and leaves the bench alone', async (_what, file) => {
    const ports = benchPorts();
    expect(await takeInJob(ports, file)).toContain('was not taken in');
    expect(await onBench(ports)).toEqual([]);
  });
});
