import { lacksTool } from '../doubt/index.ts';
import type { Reading } from '../model/reading.ts';
import { type Arranging, arrangingOf, type Before, type Check, type Later } from '../next/index.ts';
import { type Approach, approachTo } from './approach.ts';
import { isComputed } from './is-computed.ts';
import { isHidden } from './is-hidden.ts';
import { knownNow } from './known-now.ts';
import { readIn } from './read-in.ts';
import { seenBefore } from './seen-before.ts';
import type { Session } from './session.ts';

/** Every reading that could be taken now, in the order of the tree, and where: nothing that is known of the board as it is, that
 *  is hidden behind something missing, or for which a tool is not there or something was not seen that must be. Nothing while a
 *  remedy and its proof are under way. */
export const checksNow = (session: Session): readonly Check[] =>
  candidates(session).flatMap(({ check, before }) => (before.length === 0 ? [check] : []));

/** Those that can be taken once something else was seen. */
export function checksLater(session: Session): readonly Later[] {
  const all = candidates(session);
  const waits = new Map(all.map(({ check, before }) => [check.reading.id, before]));
  return all.flatMap(({ check, before }) =>
    before.length === 0 ? [] : [{ check, before: withTheirs(before, waits) }],
  );
}

/** With all that must be seen before those in turn. */
function withTheirs(
  before: readonly Before[],
  waits: ReadonlyMap<string, readonly Before[]>,
): readonly Before[] {
  const found = new Set<Before>(before);
  const through = new Set<string>();
  for (const { reading } of found) {
    if (through.has(reading)) continue;
    through.add(reading);
    for (const other of waits.get(reading) ?? []) found.add(other);
  }
  return once([...found]);
}

/** What the board is in, and what it takes to change that. */
export const arrangingNow = ({ loaded, position }: Session): Arranging =>
  arrangingOf(loaded.tree, position.conditions);

const known = new WeakMap<Session, readonly Later[]>();

function candidates(session: Session): readonly Later[] {
  const before = known.get(session);
  if (before !== undefined) return before;
  const found = candidatesIn(session);
  known.set(session, found);
  return found;
}

function candidatesIn(session: Session): readonly Later[] {
  const { section, phase } = session.position;
  if (section === null || (section.kind === 'fault' && phase !== 'aside')) return [];
  const arranging = arrangingNow(session);
  return [...readIn(session.loaded.tree).keys()].flatMap((id) => {
    const reading = session.loaded.readings.get(id);
    if (reading === undefined || !isWanted(session, reading)) return [];
    return bestWay(session, reading, arranging) ?? [];
  });
}

const isWanted = (session: Session, reading: Reading): boolean =>
  !isComputed(reading) &&
  knownNow(session, reading.id) === null &&
  lacksTool(reading, session.equipment) === null &&
  !isHidden(session, reading);

/** In the section that waits for the least, and of those in the one that takes the least to get to. */
function bestWay(session: Session, reading: Reading, arranging: Arranging): Later | null {
  const ways = (readIn(session.loaded.tree).get(reading.id) ?? []).flatMap(({ id }) => {
    const approach = approachTo(session, id);
    const before = approach && seenBefore(session, reading, id, approach);
    const check = approach && checkBy(reading, approach, arranging);
    return check === null || before === null ? [] : [{ check, before: once(before) }];
  });
  const [best] = ways.toSorted(
    (a, b) => a.before.length - b.before.length || total(a.check) - total(b.check),
  );
  return best ?? null;
}

const total = ({ minutes, wait }: Check): number => minutes + wait;

/** Each reading once, in the bands that all demands on it leave. */
function once(before: readonly Before[]): readonly Before[] {
  const found = new Map<string, readonly string[] | null>();
  for (const { reading, bands } of before) {
    const other = found.get(reading) ?? null;
    found.set(
      reading,
      other === null || bands === null ? (other ?? bands) : other.filter((band) => bands.includes(band)),
    );
  }
  return [...found].map(([reading, bands]) => ({ reading, bands }));
}

function checkBy(
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
