import type { Entry } from '../../engine/model/entry.ts';
import type { Job } from '../../engine/model/job.ts';
import type { Proposals } from '../../engine/next/proposal.ts';
import { apply, questionOf, replay, type Session } from '../../engine/run/index.ts';
import { proposalsOf } from '../../engine/run/proposals-of.ts';
import { type Suspects, suspectsOf } from '../../engine/run/suspects-of.ts';
import { type MoveLines, moveLines } from './move-lines.ts';
import { mayPropose, type ProposalShown, proposalShown } from './proposal-shown.ts';
import { idOfSuspect, type SuspectLines, suspectLines } from './suspect-lines.ts';

/** What is asked beside the screen. Replies carry the turn of what they answer. */
export type RankRequest =
  /** `job` is null where it is the one that was asked about before. */
  | {
      readonly ask: 'rank';
      readonly turn: number;
      readonly job: Pick<Job, 'tree' | 'board' | 'laterTrees'> | null;
      readonly entries: readonly Entry[];
    }
  /** What moved a suspect of the job as it was ranked last. */
  | { readonly ask: 'moves'; readonly turn: number; readonly suspect: string };

export type RankReply =
  | { readonly tell: 'suspects'; readonly turn: number; readonly suspects: SuspectLines }
  /** The last word on a turn. */
  | { readonly tell: 'proposal'; readonly turn: number; readonly proposal: ProposalShown | null }
  | {
      readonly tell: 'moves';
      readonly turn: number;
      readonly suspect: string;
      readonly moves: MoveLines | null;
    };

/** What weighs a job's readings against each other. */
export interface RankJob {
  suspectsOf(session: Session): Suspects;
  proposalsOf(session: Session): Proposals | null;
}

/** Answers requests one after the other; a job that goes on is not walked anew. */
export function createRankServer(
  reply: (said: RankReply) => void,
  engine: RankJob = { suspectsOf, proposalsOf },
): (request: RankRequest) => void {
  let job: Pick<Job, 'tree' | 'board' | 'laterTrees'> | null = null;
  let session: Session | null = null;

  const walkedOn = (entries: readonly Entry[]): Session | null => {
    const walked = session?.entries.length ?? 0;
    const goesOn = session !== null && walked > 0 && entries[walked - 1]?.at === session.entries.at(-1)?.at;
    if (session !== null && goesOn) return entries.slice(walked).reduce(apply, session);
    return job === null ? null : replay(job.tree, entries, job);
  };

  const rank = ({ turn, job: told, entries }: Extract<RankRequest, { readonly ask: 'rank' }>) => {
    if (told !== null) [job, session] = [told, null];
    session = walkedOn(entries);
    if (session === null) return;
    const found = engine.suspectsOf(session);
    reply({ tell: 'suspects', turn, suspects: suspectLines(session, found) });
    const question = questionOf(session);
    const proposals = mayPropose(question) ? engine.proposalsOf(session) : null;
    const proposal = proposals && proposalShown(session, question, proposals, found.belief.hypotheses);
    reply({ tell: 'proposal', turn, proposal });
  };

  const moves = (suspect: string): MoveLines | null => {
    if (session === null) return null;
    const found = engine.suspectsOf(session).ranked.find((one) => idOfSuspect(one) === suspect);
    return found === undefined ? null : moveLines(session, found);
  };

  return (request) => {
    if (request.ask === 'rank') rank(request);
    else reply({ ...request, tell: 'moves', moves: moves(request.suspect) });
  };
}
