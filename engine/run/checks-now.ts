import { lacksTool } from '../doubt/index.ts';
import type { Reading } from '../model/reading.ts';
import { type Arranging, arrangingOf, type Check } from '../next/index.ts';
import { type Approach, approachTo, needsOn } from './approach.ts';
import { isComputed } from './is-computed.ts';
import { isHidden } from './is-hidden.ts';
import { knownNow } from './known-now.ts';
import { lackingFor } from './lacking-for.ts';
import { isPowerSafe } from './power-order.ts';
import { readIn } from './read-in.ts';
import type { Session } from './session.ts';

/** Every reading that could be taken now, in the order of the tree, and where: nothing that is known of the board as it is, that
 *  is hidden behind something missing, or for which a tool is not there or something was not seen that must be. Nothing while a
 *  remedy and its proof are under way. */
export function checksNow(session: Session): readonly Check[] {
  const { section, phase } = session.position;
  if (section === null || (section.kind === 'fault' && phase !== 'aside')) return [];
  const arranging = arrangingNow(session);
  return [...readIn(session.loaded.tree).keys()].flatMap((id) => {
    const reading = session.loaded.readings.get(id);
    const check =
      reading === undefined || !isOpen(session, reading) ? null : checkOf(session, reading, arranging);
    return check ?? [];
  });
}

/** What the board is in, and what it takes to change that. */
export const arrangingNow = ({ loaded, position }: Session): Arranging =>
  arrangingOf(loaded.tree, position.conditions);

function isOpen(session: Session, reading: Reading): boolean {
  return (
    !isComputed(reading) &&
    knownNow(session, reading.id) === null &&
    lacksTool(reading, session.equipment) === null &&
    lackingFor(session, reading.onlyIf).length === 0 &&
    reading.after.every((id) => isSeen(session, id)) &&
    !isHidden(session, reading)
  );
}

/** What no section of the tree asks for need not be seen first: the tree begins where that has been done. */
const isSeen = (session: Session, id: string): boolean =>
  !readIn(session.loaded.tree).has(id) || (knownNow(session, id)?.bands.length ?? 0) > 0;

/** The section that takes the least to get to; null where none can be gone to. */
function checkOf(session: Session, reading: Reading, arranging: Arranging): Check | null {
  const ways = (readIn(session.loaded.tree).get(reading.id) ?? []).flatMap(({ id }) => {
    const approach = approachTo(session, id);
    if (approach === null || !isAllowed(session, reading, id, approach)) return [];
    return byApproach(reading, approach, arranging) ?? [];
  });
  const [best] = ways.toSorted((a, b) => a.minutes + a.wait - b.minutes - b.wait);
  return best ?? null;
}

const isAllowed = (session: Session, reading: Reading, section: string, approach: Approach): boolean =>
  lackingFor(session, needsOn(approach)).length === 0 &&
  isPowerSafe(session, reading, section, needsOn(approach));

function byApproach(
  reading: Reading,
  { section, tasks, wants }: Approach,
  { now, minutesTo }: Arranging,
): Check | null {
  const done = { ...now, ...Object.assign({}, ...tasks.map(({ sets }) => sets)) };
  const arranged = minutesTo(reading.when, done);
  if (arranged === null) return null;
  const wanted = { ...wants, ...reading.when };
  return {
    reading,
    section,
    minutes: reading.minutes + arranged + tasks.reduce((sum, { minutes }) => sum + minutes, 0),
    wait: reading.wait + tasks.reduce((sum, { wait }) => sum + wait, 0),
    changes: Object.fromEntries(Object.entries(wanted).filter(([id, value]) => now[id] !== value)),
    wants: wanted,
  };
}
