import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recordOf } from '../../../engine/job/index.ts';
import { upgradeJob } from '../../../engine/job/upgrade-job.ts';
import { upgradeTree } from '../../../engine/job/upgrade-tree.ts';
import { problemsOfCompiledTree, problemsOfJob } from '../../../engine/job/validate-job.ts';
import type { Job } from '../../../engine/model/job.ts';
import { machineValue, pathOf, questionOf, replay } from '../../../engine/run/index.ts';
import { benchTree } from '../../helpers/bench.ts';

/** Made by the version before there were board sheets, doubt, known-good boards and hand-overs. */
const old = (name: string): Job => JSON.parse(readFileSync(`tests/fixtures/jobs/${name}.job.json`, 'utf8'));
const upgraded = (name: string): Job => upgradeJob(old(name)) as Job;

describe('a job of the version before', () => {
  test.each(['open', 'mended'])(
    'that is %s is no job as it stands, and is one when it was filled',
    (name) => {
      expect(problemsOfJob(old(name))).not.toEqual([]);
      expect(problemsOfJob(upgraded(name))).toEqual([]);
    },
  );

  test('leads to the reading that it stood at, its corrections and untidy values included', () => {
    const job = upgraded('open');
    const session = replay(job.tree, job.entries, job);
    expect(session.misfits).toEqual([]);
    expect(machineValue(session)).toBe('s-clock');
    expect(pathOf(session.position).map(({ id }) => id)).toEqual(['ask-first', 'rails', 'clock']);
    expect(questionOf(session)).toMatchObject({
      ask: 'reading',
      reading: { id: 'cpu_clk' },
      known: { bands: ['slow', 'good', 'fast'] },
    });
    expect(recordOf(job).readings.map(({ value, aside }) => [value, aside])).toEqual([
      ['nothing', null],
      ['4.98 V', 'corrected by 13'],
      ['4.9 V', null],
      ['48 MHz .. 52 MHz', null],
      ['5.02 V', null],
    ]);
  });

  test('that was mended stays mended, with its proof and its digest, and with nothing made up', () => {
    const record = recordOf(upgraded('mended'));
    expect(record).toMatchObject({
      outcome: 'mended',
      closing: 'back in its case',
      tree: { digest: old('mended').tree.digest },
      laterTrees: [],
      sheet: null,
      bench: null,
      findings: [],
      overrides: [],
      remedies: [{ fault: 'bad_supply', which: 'plug', effect: 'mended' }],
    });
    expect(record.proof.map(({ value }) => value)).toEqual(['5.01 V', 'runs', '4.9 V']);
    expect(record.readings.every(({ doubt, twin }) => doubt === null && twin === null)).toBe(true);
  });

  test('brings its tree along, which is a tree of today', () => {
    const tree = upgradeTree(old('open').tree);
    expect(problemsOfCompiledTree(old('open').tree)).not.toEqual([]);
    expect(problemsOfCompiledTree(tree)).toEqual([]);
    expect(tree).toMatchObject({ sections: { length: 9 }, conditions: [] });
  });
});

describe('filling what was not known', () => {
  test('leaves a job of today as it is', () => {
    const job: Job = {
      format: 1,
      kind: 'job',
      id: 'j1',
      tree: benchTree(),
      laterTrees: [],
      board: null,
      entries: [{ kind: 'opened', board: 'b', owner: '', story: '', at: '2026-03-01T10:00:00+01:00' }],
    };
    expect(upgradeJob(job)).toBe(job);
  });

  test('is done once: a second time changes nothing', () => {
    const job = upgraded('mended');
    expect(upgradeJob(job)).toBe(job);
  });

  test('never throws and makes no job of what is none', () => {
    const parts = { tree: fc.anything(), entries: fc.anything(), laterTrees: fc.anything() };
    const shaped = fc.record(parts, { requiredKeys: [] });
    fc.assert(
      fc.property(fc.oneof(fc.anything(), shaped), (data) => problemsOfJob(upgradeJob(data)).length > 0),
    );
  });
});
