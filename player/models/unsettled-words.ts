import { latest, type Session, type Unsettled } from '../../engine/run/index.ts';
import { observationText } from '../../engine/scale/index.ts';
import { bandsInWords } from './band-words.ts';
import { doubtWords } from './doubt-words.ts';
import { settleWords } from './settle-words.ts';

interface UnsettledWords {
  /** `4.76 V, ± 44 mV with the bench meter: low and good are both possible` */
  readonly what: string;
  readonly settle: string;
}

/** What one reading leaves open, and what would settle it. No final full stops. */
export function unsettledWords(session: Session, { reading, bands, by }: Unsettled): UnsettledWords {
  const observation = latest(session, reading.id)?.observation ?? null;
  const value = observation === null ? null : observationText(observation);
  const doubt = observation === null ? null : doubtWords(observation);
  const shown = [value, doubt].filter((words) => words !== null).join(', ');
  const names = bandsInWords(reading, bands);
  const all = `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
  const open = `${all} are ${bands.length === 2 ? 'both' : 'all'} possible`;
  const settle = settleWords(session, by) ?? 'A better contact, or another instrument, may settle it';
  return {
    what: shown === '' ? open : `${shown}: ${open}`,
    settle: `${settle.charAt(0).toUpperCase()}${settle.slice(1)}`,
  };
}
