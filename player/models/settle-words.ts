import { type Settler, settlerWords } from '../../engine/doubt/index.ts';
import type { Session } from '../../engine/run/index.ts';
import { twoDigits } from './two-digits.ts';

/** More ways than these are read by nobody at a bench. */
const told = 3;

/** `the 6 V range of the bench meter (± 18 mV), or the average of 5 readings (± 30 mV), would settle it`; null where nothing
 *  at hand would. */
export function settleWords(session: Session, by: readonly Settler[]): string | null {
  const ways = by.slice(0, told).map((settler) => wordsOf(session, settler));
  const [first, ...others] = ways;
  if (first === undefined) return null;
  if (others.length === 0) return `${first} would settle it`;
  return `${[first, ...others.slice(0, -1)].join(', ')}, or ${others.at(-1)}, would settle it`;
}

/** A setting goes by what it is, not by its name in the tree. */
function wordsOf(session: Session, settler: Settler): string {
  if ('plusMinus' in settler) return settlerWords({ ...settler, plusMinus: twoDigits(settler.plusMinus) });
  if (settler.kind !== 'setting') return settlerWords(settler);
  return `knowing "${session.loaded.settings.get(settler.setting)?.is ?? settler.setting}"`;
}
