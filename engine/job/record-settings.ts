import type { JobRecord } from '../model/record.ts';
import { type Session, valueText } from '../run/index.ts';

/** The settings as they stand, with the jumper positions they were noted by. */
export const recordSettings = (session: Session): JobRecord['settings'] =>
  session.loaded.tree.settings
    .filter(({ id }) => session.settings.has(id))
    .map(({ id, is }) => {
      const value = valueText(session, { kind: 'name', name: id });
      const positions = positionsOf(session, id);
      return { id, is, value: positions === null ? value : `${value} (${positions})` };
    });

/** What was typed last, where that was jumpers and no value. */
function positionsOf({ effective, board }: Session, id: string): string | null {
  const last = effective.findLast(
    (entry) => (entry.kind === 'set' || entry.kind === 'altered') && entry.setting === id,
  );
  const typed = last?.kind === 'set' || last?.kind === 'altered' ? last.typed : '';
  const named =
    board?.jumpers.some((jumper) => typed.toLowerCase().includes(jumper.id.toLowerCase())) ?? false;
  return named ? typed.trim() : null;
}
