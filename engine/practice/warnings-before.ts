import type { Hazard } from '../model/prose.ts';
import type { Need, Reading } from '../model/reading.ts';
import type { Section } from '../model/section.ts';
import { plainText } from '../prose/plain-text.ts';
import { readIn } from '../run/read-in.ts';
import { normalBandsOf } from '../scale/index.ts';
import type { Drill, PassedOver, Warning } from './drill.ts';
import { groundOf } from './ground-of.ts';
import { isMet, isTrue, lastSeen, nameOf } from './seen-in.ts';

/** A warning, and what it guards against on this very board. */
type Guard = Warning & { readonly guards: readonly Need[] };

/** What stands before a reading and is neither seen nor acknowledged yet. */
export function guardsBefore(drill: Drill, reading: Reading, section: Section | null): readonly Guard[] {
  return [
    ...hazardsBefore(drill, section),
    ...reading.onlyIf.filter((need) => !isMet(drill, need)).map((need) => onlyIf(drill, need)),
    ...powerBefore(drill, reading),
    ...orderBefore(drill, reading),
  ];
}

/** What must have been seen before a remedy, or another reading, may follow. */
export const onlyIf = (drill: Drill, need: Need): Guard => ({
  kind: 'only-if',
  text: `Only if "${nameOf(drill, need.reading)}" is ${need.bands.join(' or ')}`,
  guards: [need],
});

/** The hazards of a section and, once in a drill, of the whole tree. */
function hazardsBefore(drill: Drill, section: Section | null): readonly Guard[] {
  const heeded = new Set(
    drill.events.flatMap((event) =>
      event.kind === 'measured' && event.heeded ? [sectionOf(drill, event.reading)?.id ?? ''] : [],
    ),
  );
  const head = heeded.size > 0 ? [] : drill.tree.hazards;
  const own = section === null || heeded.has(section.id) ? [] : section.hazards;
  return [...head, ...own].filter(isGrave).map((hazard) => ({
    kind: 'hazard' as const,
    text: textOf(hazard),
    guards: [],
  }));
}

const isGrave = ({ word }: Hazard): boolean => word === 'danger' || word === 'warning';

function textOf({ word, blocks }: Hazard): string {
  const text = plainText(blocks, () => '…')
    .replace(/\s+/g, ' ')
    .trim();
  return `${word.charAt(0).toUpperCase()}${word.slice(1)}: ${text.replace(/\.$/, '')}`;
}

/** Readings to be taken before, but for those that another warning names. */
function orderBefore(drill: Drill, reading: Reading): readonly Guard[] {
  const named = new Set(reading.onlyIf.map((need) => need.reading));
  const cold = new Set(coldBefore(drill, reading).map(({ id }) => id));
  return reading.after
    .filter((id) => !named.has(id) && !cold.has(id) && isAsked(drill, id) && lastSeen(drill, id) === null)
    .map((id) => ({ kind: 'order' as const, text: `"${nameOf(drill, id)}" comes before it`, guards: [] }));
}

/** No power before the resistance of what it feeds. */
function powerBefore(drill: Drill, reading: Reading): readonly Guard[] {
  const named = new Set(reading.onlyIf.map((need) => need.reading));
  return coldBefore(drill, reading)
    .filter(({ id }) => !named.has(id) && isAsked(drill, id) && lastSeen(drill, id) === null)
    .map((cold) => ({
      kind: 'power' as const,
      text: `No power before "${cold.is}" was read`,
      guards: [{ reading: cold.id, bands: normalBandsOf(cold) }],
    }));
}

/** Readings without power that a powered one comes after, directly or by those between. */
function coldBefore(drill: Drill, reading: Reading): readonly Reading[] {
  if (reading.power !== 'on') return [];
  const { readings } = groundOf(drill);
  const found = new Set([reading]);
  for (const one of found) {
    for (const id of [...one.after, ...one.onlyIf.map((need) => need.reading)]) {
      const before = readings.get(id);
      if (before !== undefined) found.add(before);
    }
  }
  return [...found].filter(({ power, normal }) => power === 'off' && normal !== 'any');
}

/** What the tree itself never asks for is not missed. */
const isAsked = (drill: Drill, reading: string): boolean => sectionOf(drill, reading) !== null;

/** The section that reads it first. */
export const sectionOf = ({ tree }: Drill, reading: string): Section | null =>
  readIn(tree).get(reading)?.[0] ?? null;

/** What was passed over, and whether the board itself took harm: what the warning guards against was so. */
export const passedOver = (drill: Drill, guards: readonly Guard[]): readonly PassedOver[] =>
  guards.map(({ kind, text, guards: needs }) => ({
    kind,
    text,
    harm: needs.some((need) => !isTrue(drill, need)),
  }));
