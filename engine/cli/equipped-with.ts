import { printInstrument } from '../doubt/index.ts';
import type { Instrument } from '../model/instrument.ts';
import { apply, entryFor, type Session } from '../run/index.ts';

const linesOf = (instruments: readonly Instrument[]): readonly string[] => instruments.map(printInstrument);

/** The session with these instruments noted, where they are not so already. */
export function equippedWith(session: Session, instruments: readonly Instrument[], at: string): Session {
  const lines = linesOf(instruments);
  if (lines.join('\n') === linesOf(session.equipment.instruments).join('\n')) return session;
  const entry = entryFor(session, { say: 'equip', instruments: lines, lacking: null, rule: null }, at);
  return entry.ok ? apply(session, entry.value) : session;
}
