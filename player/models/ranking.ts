import { effect, type ReadonlySignal, signal } from '@preact/signals';
import { questionOf, type Session } from '../../engine/run/index.ts';
import type { Clock } from '../ports/clock.ts';
import { mayPropose, type ProposalShown, proposalShown } from './proposal-shown.ts';
import type { RankJob } from './rank-job.ts';
import { type SuspectLines, suspectLines } from './suspect-lines.ts';

/** The suspects of one job, and the check that is quicker than the tree's own. */
export interface Ranking {
  /** Those of the entry before stay until the present ones are worked out. Null before the first. */
  readonly suspects: ReadonlySignal<SuspectLines | null>;
  /** Null while it is not worked out, and where nothing is quicker. */
  readonly proposal: ReadonlySignal<ProposalShown | null>;
  /** What ranks could not be fetched: the next entry tries again. */
  readonly failed: ReadonlySignal<boolean>;
  dispose(): void;
}

/** Ranks after every entry, once the step that it leads to is drawn. */
export function createRanking(
  session: ReadonlySignal<Session | null>,
  clock: Pick<Clock, 'idle'>,
  fetchRank: () => Promise<RankJob>,
): Ranking {
  const suspects = signal<SuspectLines | null>(null);
  const proposal = signal<ProposalShown | null>(null);
  const failed = signal(false);
  let fetched: RankJob | null = null;

  const stop = effect(() => {
    const now = session.value;
    proposal.value = null;
    if (now === null || !isRanked(now)) {
      suspects.value = null;
      return;
    }
    let wanted = true;
    const later = (work: () => void) => clock.idle(() => wanted && work());
    const rank = ({ suspectsOf, proposalsOf }: RankJob) => {
      const found = suspectsOf(now);
      suspects.value = suspectLines(now, found);
      const question = questionOf(now);
      if (!mayPropose(question)) return;
      later(() => {
        const proposals = proposalsOf(now);
        proposal.value = proposals && proposalShown(now, question, proposals, found.belief.hypotheses);
      });
    };
    later(() => {
      if (fetched !== null) return rank(fetched);
      fetchRank().then(
        (ready) => {
          fetched = ready;
          failed.value = false;
          if (wanted) rank(ready);
        },
        () => {
          failed.value = true;
        },
      );
    });
    return () => {
      wanted = false;
    };
  });
  return { suspects, proposal, failed, dispose: stop };
}

const isRanked = ({ opened, closed, loaded }: Session): boolean =>
  opened && closed === null && loaded.tree.faults.length > 0;
