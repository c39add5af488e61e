import { signal } from '@preact/signals';
import { expect, test, vi } from 'vitest';
import type { Session } from '../../../engine/run/index.ts';
import type { RankJob } from '../../../player/models/rank-job.ts';
import { createRanking } from '../../../player/models/ranking.ts';
import { benchTree, opened, walk } from '../../helpers/bench.ts';
import { madeProposals, madeSuspects } from '../helpers/hand-made-rank.ts';

const tree = benchTree();
const at = (...answers: string[]): Session => walk(tree, ...opened, ...answers);

/** A bench that is idle only when a test says so, and a ranking that counts how often it was asked. */
function bench() {
  const waiting: (() => void)[] = [];
  const rank: RankJob = {
    suspectsOf: vi.fn((session: Session) =>
      madeSuspects(session, [
        ['crystal', 0.6],
        ['no_power_good', 0.3],
        ['', 0.1],
      ]),
    ),
    proposalsOf: vi.fn((session: Session) =>
      madeProposals(session, [
        {
          reading: 'cpu_clk',
          section: 'clock',
          rate: 1,
          parts: [
            { hypothesis: 0, band: 'none' },
            { hypothesis: 1, band: 'good' },
          ],
        },
      ]),
    ),
  };
  return {
    rank,
    clock: { idle: (work: () => void) => void waiting.push(work) },
    async idle() {
      for (const work of waiting.splice(0)) work();
      await Promise.resolve();
      await Promise.resolve();
    },
  };
}

test('createRanking() ranks only once the step is drawn, and proposes after that', async () => {
  const { rank, clock, idle } = bench();
  const ranking = createRanking(signal<Session | null>(at('nothing')), clock, async () => rank);
  expect(rank.suspectsOf).not.toHaveBeenCalled();
  await idle();
  expect(ranking.suspects.value?.first.map(({ id }) => id)).toEqual(['crystal', 'no_power_good', '']);
  expect(rank.proposalsOf).not.toHaveBeenCalled();
  await idle();
  expect(ranking.proposal.value?.section).toBe('clock');
});

test('createRanking() ranks the last of several quick entries only', async () => {
  const { rank, clock, idle } = bench();
  const session = signal<Session | null>(at('nothing'));
  createRanking(session, clock, async () => rank);
  await idle();
  session.value = at('nothing', '5');
  session.value = at('nothing', '5', '4.5');
  await idle();
  await idle();
  expect(vi.mocked(rank.suspectsOf).mock.calls.map(([one]) => one.entries.length)).toEqual([6, 8]);
});

test('createRanking() keeps the suspects of the entry before until the next are ranked, but no proposal', async () => {
  const { rank, clock, idle } = bench();
  const session = signal<Session | null>(at('nothing'));
  const ranking = createRanking(session, clock, async () => rank);
  await idle();
  await idle();
  session.value = at('nothing', '5');
  expect(ranking.suspects.value?.first).toHaveLength(3);
  expect(ranking.proposal.value).toBe(null);
});

test('createRanking() ranks nothing once the job is closed', async () => {
  const { rank, clock, idle } = bench();
  const session = signal<Session | null>(at('nothing', '5', '0.1', 'remedied', '4.9', 'runs', 'close'));
  const ranking = createRanking(session, clock, async () => rank);
  await idle();
  expect(rank.suspectsOf).not.toHaveBeenCalled();
  expect(ranking.suspects.value).toBe(null);
});

test('createRanking() says that the ranking was not fetched, and tries again after the next entry', async () => {
  const { rank, clock, idle } = bench();
  let online = false;
  const fetchRank = async () => {
    if (!online) throw new Error('no answer');
    return rank;
  };
  const session = signal<Session | null>(at('nothing'));
  const ranking = createRanking(session, clock, fetchRank);
  await idle();
  expect([ranking.failed.value, ranking.suspects.value]).toEqual([true, null]);
  online = true;
  session.value = at('nothing', '5');
  await idle();
  expect([ranking.failed.value, ranking.suspects.value?.first.length]).toEqual([false, 3]);
});

test('createRanking() stops when it is put away', async () => {
  const { rank, clock, idle } = bench();
  const ranking = createRanking(signal<Session | null>(at('nothing')), clock, async () => rank);
  ranking.dispose();
  await idle();
  expect(rank.suspectsOf).not.toHaveBeenCalled();
});
