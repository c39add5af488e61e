import type { Entry } from '../model/entry.ts';

/** The entries as they count after a correction, the new value in place of the old one; null for any other entry. */
export function correctedEntries(entries: readonly Entry[], entry: Entry): readonly Entry[] | null {
  if (entry.kind === 'corrected') return withSetting(entries, entry);
  return entry.kind === 'retaken' && entry.manner === 'correction' ? withReading(entries, entry) : null;
}

type Of<Kind> = Extract<Entry, { readonly kind: Kind }>;

function withReading(
  entries: readonly Entry[],
  { of, observation, board }: Of<'retaken'>,
): readonly Entry[] | null {
  const old = entries[of];
  if (old?.kind !== 'read' && old?.kind !== 'confirmed' && old?.kind !== 'unread') return null;
  return entries.with(of, { kind: 'read', section: old.section, observation, board, at: old.at });
}

/** The note was wrong from the start: the entry that noted the setting gets the right value. */
function withSetting(
  entries: readonly Entry[],
  { setting, typed, value }: Of<'corrected'>,
): readonly Entry[] | null {
  const of = entries.findLastIndex(
    (entry) => (entry.kind === 'set' || entry.kind === 'altered') && entry.setting === setting,
  );
  const old = entries[of];
  return old?.kind === 'set' || old?.kind === 'altered' ? entries.with(of, { ...old, typed, value }) : null;
}
