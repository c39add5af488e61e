import type { Taken } from '../../engine/model/refusal.ts';
import { type Answer, questionOf, type Session, withTree } from '../../engine/run/index.ts';
import type { Ports } from '../ports/ports.ts';
import { storeProblemWords } from './store-problem-words.ts';

/** The session with the tree at hand that an answer leads to: fetched, and kept with the job, where it is not
 *  there yet. */
export async function bringTree(
  ports: Ports,
  job: string,
  session: Session,
  answer: Answer,
): Promise<Taken<Session>> {
  const wanted = treeFor(session, answer);
  if (wanted === null) return { ok: true, value: session };
  const fetched = await ports.trees.load(wanted);
  if (!fetched.ok) return refused(`The tree could not be fetched: ${fetched.why}. The job stays as it is`);
  const kept = await ports.store.addTree(job, fetched.value);
  return kept.ok
    ? { ok: true, value: withTree(session, fetched.value) }
    : refused(storeProblemWords(kept.problem));
}

/** Id of the tree to be fetched; null where none is needed. */
function treeFor(session: Session, { say }: Answer): string | null {
  const question = questionOf(session);
  if (say === 'hand-over' && question.ask === 'hand-over')
    return question.tree === null ? question.section.tree : null;
  return say === 'newer' ? session.loaded.tree.id : null;
}

const refused = (text: string): Taken<never> => ({ ok: false, refusal: { text, offers: [] } });
