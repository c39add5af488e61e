import type { Entry, EntryKind } from '../model/entry.ts';
import { derive } from './derive.ts';
import { endCalls } from './end-calls.ts';
import { goOn } from './go-on.ts';
import type { Happening } from './happenings/happening.ts';
import { happenings } from './happenings/index.ts';
import type { Session } from './session.ts';

/** Kinds that lead on along the tree's own arrows at once. */
const leadOn: ReadonlySet<EntryKind> = new Set(['did', 'assumed']);

/** What `entry` does to the session, before it is written down: what it does by itself, what is computed anew from it,
 *  and where that leads. */
export function happen(session: Session, entry: Entry, index: number): Session {
  const row = happenings[entry.kind] as Happening<typeof entry.kind>;
  const next = row(session, entry as never, index);
  const ended = leadOn.has(entry.kind) ? endCalls(session, next, entry, index) : next;
  const known = derive(session, ended, entry, index);
  return entry.kind === 'back' ? known : goOn(session, known, entry, index);
}
