import type { Proposals } from '../../engine/next/proposal.ts';
import type { Session } from '../../engine/run/index.ts';
import type { Suspects } from '../../engine/run/suspects-of.ts';

/** What weighs a job's readings against each other. */
export interface RankJob {
  suspectsOf(session: Session): Suspects;
  proposalsOf(session: Session): Proposals | null;
}

/** Fetched when the first job is on the screen: the bench itself does without. */
export async function fetchRankJob(): Promise<RankJob> {
  const [{ suspectsOf }, { proposalsOf }] = await Promise.all([
    import('../../engine/run/suspects-of.ts'),
    import('../../engine/run/proposals-of.ts'),
  ]);
  return { suspectsOf, proposalsOf };
}
