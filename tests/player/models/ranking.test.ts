import { signal } from '@preact/signals';
import { expect, test, vi } from 'vitest';
import type { Session } from '../../../engine/run/index.ts';
import { createRankServer, type RankJob, type RankReply } from '../../../player/models/rank-server.ts';
import { createRanking } from '../../../player/models/ranking.ts';
import { fakeClock } from '../../../player/ports/fake-clock.ts';
import type { Ranker } from '../../../player/ports/ranker.ts';
import { benchTree, opened, say, walk } from '../../helpers/bench.ts';
import { madeProposals, madeSuspects } from '../helpers/hand-made-rank.ts';

const tree = benchTree();
const first = walk(tree, ...opened);
const at = (...answers: string[]): Session => answers.reduce(say, first);

const handMade = () =>
  ({
    suspectsOf: vi.fn((session: Session) =>
      madeSuspects(session, [
        ['crystal', 0.6, [['post_code none', 3]]],
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
  }) satisfies RankJob;

/** A bench that is idle, and whose ranking goes a step on, only when a test says so. */
function bench(session: Session | null) {
  const engine = handMade();
  const works: (() => void)[] = [];
  const lines: { asked: number; jobs: number; closed: boolean; lost: () => void; work: (() => void)[] }[] =
    [];
  const ranker: Ranker = {
    open({ reply, lost }) {
      const line = { asked: 0, jobs: 0, closed: false, lost, work: [] as (() => void)[] };
      lines.push(line);
      const serve = createRankServer(
        (said: RankReply) => void line.work.push(() => !line.closed && reply(said)),
        engine,
      );
      return {
        ask(request) {
          line.asked += 1;
          if (request.ask === 'rank' && request.job !== null) line.jobs += 1;
          serve(request);
        },
        close() {
          line.closed = true;
        },
      };
    },
  };
  const now = signal(session);
  const clock = { ...fakeClock(), idle: (work: () => void) => void works.push(work) };
  const ranking = createRanking(now, { clock, ranker });
  return {
    engine,
    lines,
    now,
    ranking,
    idle: () => {
      for (const work of works.splice(0)) work();
    },
    /** The replies that are on their way, or the first `count` of them. */
    answer: (count = 9) => {
      for (const work of lines.at(-1)?.work.splice(0, count) ?? []) work();
    },
  };
}

test('createRanking() ranks only once the step is drawn, and proposes after that', () => {
  const { engine, ranking, idle, answer } = bench(at('nothing'));
  expect(engine.suspectsOf).not.toHaveBeenCalled();
  idle();
  answer(1);
  expect(ranking.suspects.value?.first.map(({ id }) => id)).toEqual(['crystal', 'no_power_good', '']);
  expect(ranking.proposal.value).toBe(null);
  answer();
  expect(ranking.proposal.value?.section).toBe('clock');
});

test('createRanking() ranks the last of several quick entries only, and tells the tree once', () => {
  const { engine, lines, now, idle, answer } = bench(at('nothing'));
  idle();
  answer();
  now.value = at('nothing', '5');
  now.value = at('nothing', '5', '4.5');
  idle();
  answer();
  expect(engine.suspectsOf.mock.calls.map(([one]) => one.entries.length)).toEqual([6, 8]);
  expect(lines.map(({ jobs }) => jobs)).toEqual([1]);
});

test('createRanking() gives up what it was at when the job goes on', () => {
  const { lines, now, ranking, idle, answer } = bench(at('nothing'));
  idle();
  now.value = at('nothing', '5');
  answer();
  expect(ranking.proposal.value).toBe(null);
  now.value = at('nothing');
  idle();
  now.value = at('nothing', '5');
  idle();
  expect(lines.map(({ closed, jobs }) => [closed, jobs])).toEqual([
    [true, 1],
    [false, 1],
  ]);
});

test('createRanking() keeps the suspects of the entry before until the next are ranked, but no proposal', () => {
  const { now, ranking, idle, answer } = bench(at('nothing'));
  idle();
  answer();
  now.value = at('nothing', '5');
  expect(ranking.suspects.value?.first).toHaveLength(3);
  expect(ranking.proposal.value).toBe(null);
});

test('createRanking() tells on request what moved a suspect', async () => {
  const { ranking, idle, answer } = bench(at('nothing'));
  expect(await ranking.moves('crystal')).toBe(null);
  idle();
  answer();
  const asked = ranking.moves('crystal');
  answer();
  expect((await asked)?.lines.map(({ reading, times }) => [reading, times])).toEqual([['post_code', '×3']]);
  const unknown = ranking.moves('gremlin');
  answer();
  expect(await unknown).toBe(null);
});

test('createRanking() ranks nothing once the job is closed', () => {
  const { engine, ranking, idle } = bench(at('nothing', '5', '0.1', 'remedied', '4.9', 'runs', 'close'));
  idle();
  expect(engine.suspectsOf).not.toHaveBeenCalled();
  expect(ranking.suspects.value).toBe(null);
});

test('createRanking() says that the ranking was not fetched, and tries again after the next entry', async () => {
  const { lines, now, ranking, idle, answer } = bench(at('nothing'));
  idle();
  const asked = ranking.moves('crystal');
  lines[0]?.lost();
  expect([ranking.failed.value, ranking.suspects.value, await asked]).toEqual([true, null, null]);
  now.value = at('nothing', '5');
  idle();
  answer();
  expect([ranking.failed.value, ranking.suspects.value?.first.length]).toEqual([false, 3]);
});

test('createRanking() stops when it is put away', () => {
  const { engine, ranking, idle } = bench(at('nothing'));
  ranking.dispose();
  idle();
  expect(engine.suspectsOf).not.toHaveBeenCalled();
});

test('createRankServer() walks a job on from where it stood', () => {
  const engine = handMade();
  const serve = createRankServer(() => {}, engine);
  const { firstTree, entries } = at('nothing', '5', '4.5');
  serve({
    ask: 'rank',
    turn: 1,
    job: { tree: firstTree, board: null, laterTrees: [] },
    entries: entries.slice(0, 6),
  });
  serve({ ask: 'rank', turn: 2, job: null, entries });
  const [[before], [after]] = engine.suspectsOf.mock.calls as unknown as [[Session], [Session]];
  expect(after.loaded).toBe(before.loaded);
  expect(after.position.section?.id).toBe('clock');
});
