import type { Reading } from '../model/reading.ts';
import type { Before } from '../next/index.ts';
import { type Approach, needsOn } from './approach.ts';
import { knownNow } from './known-now.ts';
import { ohmsBefore } from './power-order.ts';
import { readIn } from './read-in.ts';
import type { Session } from './session.ts';
import { takenFor } from './taken-for.ts';

/** What has to be seen yet before a reading is taken in a section; null where something was seen that bars it, or something must be
 *  seen that no section asks for. What comes only `after` something that the tree does not ask for anywhere need not wait: the tree begins where that
 *  has been done. */
export function seenBefore(
  session: Session,
  reading: Reading,
  section: string,
  approach: Approach,
): readonly Before[] | null {
  const left: Before[] = [];
  const asked = readIn(session.loaded.tree);
  /** @returns false where it bars the reading */
  const demand = ({ reading: id, bands }: Before, isBinding: boolean): boolean => {
    const known = knownNow(session, id)?.bands ?? [];
    if (known.length > 0) return bands === null || known.every((band) => bands.includes(band));
    const found = session.loaded.readings.get(id);
    const inputs = found === undefined ? [] : takenFor(session, found);
    if (inputs.length === 0 || inputs.some((input) => !asked.has(input.id))) return !isBinding;
    for (const input of inputs) left.push({ reading: input.id, bands: input.id === id ? bands : null });
    return true;
  };
  const isOpen =
    [...reading.onlyIf, ...needsOn(approach)].every((need) => demand(need, true)) &&
    reading.after.every((id) => demand({ reading: id, bands: null }, false)) &&
    ohmsBefore(session, reading, section).every((ohms) => demand(ohms, false));
  return isOpen ? left : null;
}
