import type { CircleKey } from '../diagnostics/front-matter-facts.ts';
import { namesIn } from '../formula/index.ts';
import type { Path } from '../model/front-matter.ts';
import type { Need, Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import type { FactsContext } from './facts-context.ts';
import { findCircles } from './find-circles.ts';
import { findReading } from './find-reading.ts';
import { type Nameable, needsOf } from './needs-of.ts';
import { type RawTable, tableOf, textOf, textsOf } from './raw.ts';
import { checkFrom, inputDimensions } from './read-from.ts';
import { readHidden } from './read-hidden.ts';
import type { OwnReadings } from './read-readings.ts';
import type { ReadSettings } from './read-settings.ts';

/** The file's readings with what they need, what is to be taken or seen before them, what they show while something is
 *  missing, and what they are computed from.
 *  @param names all readings there are, the file's own among them */
export function readNeeds(
  own: OwnReadings,
  names: Nameable,
  settings: ReadSettings,
  data: RawTable,
  context: FactsContext,
): readonly Reading[] {
  const table = tableOf(data.readings);
  const complete = new Map<string, Reading>();
  for (const reading of own.inLikeOrder) {
    const raw = tableOf(table[reading.id]);
    const like = complete.get(reading.like ?? '') ?? names.readings.get(reading.like ?? '') ?? null;
    complete.set(reading.id, completed(reading, raw, like, names, settings.settings, context));
  }
  checkInputs(own, names, settings, table, context);
  const all = [...names.readings.values()].map((reading) => complete.get(reading.id) ?? reading);
  const isOwn = (name: string) => complete.has(name);
  for (const key of circleKeys) tellCircles(key, all, isOwn, context);
  return own.readings.map((reading) => complete.get(reading.id) ?? reading);
}

function completed(
  reading: Reading,
  raw: RawTable,
  like: Reading | null,
  names: Nameable,
  settings: readonly Setting[],
  context: FactsContext,
): Reading {
  const { id } = reading;
  const path = ['readings', id];
  const others = (needs: readonly Need[] = []) => needs.filter((need) => need.reading !== id);
  const read = (key: string): readonly Need[] => needsOf(raw[key], [...path, key], names, context);
  const needs = 'needs' in raw ? read('needs') : others(like?.needs);
  const isTaken = reading.from === null && !('from' in raw);
  const onlyIf = 'only if' in raw ? read('only if') : others(like?.onlyIf);
  const after =
    'after' in raw
      ? afterOf(raw.after, [...path, 'after'], names, context)
      : (like?.after ?? []).filter((name) => name !== id);
  const hidden = readHidden(raw, path, { ...reading, needs }, like, settings, context);
  return { ...reading, needs, hidden, ...(isTaken && { onlyIf, after }) };
}

const afterOf = (raw: unknown, path: Path, { readings }: Nameable, context: FactsContext) =>
  textsOf(raw).filter(
    (name, index) => findReading(name, readings, [...path, index], 'value', context) !== null,
  );

/** Of the derived readings; one that takes over both its formula and its unit has been looked at there. */
function checkInputs(
  { readings: own }: OwnReadings,
  { readings }: Nameable,
  { settings, broken }: ReadSettings,
  table: RawTable,
  context: FactsContext,
): void {
  const derived = own.filter(({ from }) => from !== null);
  if (derived.length === 0) return;
  const dimensions = inputDimensions(settings, readings);
  for (const reading of derived) {
    const { id, from } = reading;
    const raw = tableOf(table[id]);
    const isBroken = (name: string) => broken.has(name) || (name !== id && context.unsure.has(name));
    if (from === null || !('from' in raw || 'unit' in raw) || namesIn(from).some(isBroken)) continue;
    checkFrom(textOf(raw.from) ?? '', reading, dimensions, readings, ['readings', id, 'from'], context);
  }
}

const circleKeys = ['needs', 'after', 'only if', 'from'] as const;

const nexts: Readonly<Record<(typeof circleKeys)[number], (reading: Reading) => readonly string[]>> = {
  needs: ({ needs }) => needs.map(({ reading }) => reading),
  after: ({ after }) => after,
  'only if': ({ onlyIf }) => onlyIf.map(({ reading }) => reading),
  from: ({ from }) => (from === null ? [] : namesIn(from)),
};

function tellCircles(
  key: Exclude<CircleKey, 'like'>,
  readings: readonly Reading[],
  isOwn: (name: string) => boolean,
  context: FactsContext,
): void {
  const known = new Set(readings.map(({ id }) => id));
  const arcs = new Map(
    readings.map((reading) => [reading.id, nexts[key](reading).filter((name) => known.has(name))]),
  );
  for (const names of findCircles(arcs)) {
    const own = names.find(isOwn);
    if (own !== undefined) context.atKey(['readings', own, key], { code: 'circle', key, names });
  }
}
