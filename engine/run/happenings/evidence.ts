import type { Entry } from '../../model/entry.ts';
import { refold } from '../refold.ts';
import { remember } from '../remember.ts';
import type { Happening } from './happening.ts';

const replaced = (entries: readonly Entry[], at: number, entry: Entry): readonly Entry[] =>
  entries.map((old, index) => (index === at ? entry : old));

/** `again` adds a word on the reading; `correction` puts the new value in place of the old one and
 *  walks the later entries again. */
export const retaken: Happening<'retaken'> = (session, { of, manner, observation, board, at }, index) => {
  const { reading, bands } = observation;
  if (manner === 'again') return remember(session, index, { reading, bands, observation, board, at });
  const old = session.effective[of];
  if (old?.kind !== 'read' && old?.kind !== 'confirmed' && old?.kind !== 'unread') return session;
  const read: Entry = { kind: 'read', section: old.section, observation, board, at: old.at };
  return refold(session, replaced(session.effective, of, read));
};

/** The note was wrong from the start: the entry that noted the setting gets the right value. */
export const corrected: Happening<'corrected'> = (session, { setting, typed, value }) => {
  const of = session.effective.findLastIndex(
    (entry) => (entry.kind === 'set' || entry.kind === 'altered') && entry.setting === setting,
  );
  const old = session.effective[of];
  if (old?.kind !== 'set' && old?.kind !== 'altered') return session;
  return refold(session, replaced(session.effective, of, { ...old, typed, value }));
};

/** Struck out: the reading falls back on what was known before. */
export const struck: Happening<'struck'> = (session, { of }) => ({
  ...session,
  history: new Map(
    [...session.history].map(([reading, words]) => [reading, words.filter((word) => word.entry !== of)]),
  ),
});
