import type { Entry, EntryKind } from '../../model/entry.ts';
import type { Session } from '../session.ts';

/** What one kind of entry does to a session. Total: an entry that does not fit leaves a mark, never an error. */
export type Happening<Kind extends EntryKind> = (
  session: Session,
  entry: Extract<Entry, { readonly kind: Kind }>,
  index: number,
) => Session;
