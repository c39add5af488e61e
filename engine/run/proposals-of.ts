import { type Proposals, propose } from '../next/index.ts';
import { arrangingNow, checksLater, checksNow } from './checks-now.ts';
import { openingQuestion } from './opening-question.ts';
import type { Session } from './session.ts';
import { suspectsOf } from './suspects-of.ts';

/** The checks worth taking now, best first; null where none is to be proposed: before the job is open, after it is closed, while
 *  a remedy and its proof are under way, and when nothing that can be taken tells anything. */
export function proposalsOf(session: Session): Proposals | null {
  if (session.closed !== null || openingQuestion(session) !== null) return null;
  const checks = checksNow(session);
  if (checks.length === 0) return null;
  const { belief } = suspectsOf(session);
  const proposals = propose(belief, session.loaded.tree, checks, {
    later: checksLater(session),
    arranging: arrangingNow(session),
  });
  return proposals.ranked.length === 0 ? null : proposals;
}
