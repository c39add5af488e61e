import { approachTo } from './approach.ts';
import { readIn } from './read-in.ts';
import type { Session } from './session.ts';

/** Where to go for a reading: the first section of the tree that asks for it and can be gone to, or the task before it. Empty
 *  where there is none. */
export function sectionFor(session: Session, reading: string): string {
  const asking = readIn(session.loaded.tree).get(reading) ?? [];
  const [approach] = asking.flatMap(({ id }) => approachTo(session, id) ?? []);
  return approach?.section ?? asking[0]?.id ?? '';
}
