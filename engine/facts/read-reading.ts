import { bareReading } from '../model/bare-reading.ts';
import type { StoredQuantity } from '../model/exact.ts';
import type { Formula } from '../model/formula.ts';
import type { Path } from '../model/front-matter.ts';
import type { Measure, Reading } from '../model/reading.ts';
import { readWritten } from '../quantity/index.ts';
import { allNormal } from '../scale/index.ts';
import type { FactsContext } from './facts-context.ts';
import type { Known } from './known.ts';
import { manyAlike, readMembers } from './many-alike.ts';
import type { One } from './origin.ts';
import { numberOf, type RawTable, textOf, textsOf } from './raw.ts';
import { readFrom } from './read-from.ts';
import { hasOwnKind, readMeasure } from './read-measure.ts';
import { readMinutes } from './read-minutes.ts';
import { readNormal } from './read-normal.ts';
import { readWhen } from './read-when.ts';
import { readWith } from './read-with.ts';
import { textProblems } from './text-problems.ts';

/** A reading with all that concerns it alone.
 *  @param like the reading it is like, whose keys it takes over */
export function readReading(
  id: string,
  raw: RawTable,
  path: Path,
  like: Reading | null,
  known: Known,
  context: FactsContext,
): Reading {
  const before = context.diagnostics.length;
  const from = fromOf(raw, path, like, context);
  const cut = readCut(id, raw, path, like, from, known, context);
  if (context.diagnostics.length > before || (like !== null && context.unsure.has(like.id))) {
    context.unsure.add(id);
  }
  const isDerived = from !== null || 'from' in raw;
  if (isDerived) checkDerived(raw, path, context);
  const reading: Reading = {
    id,
    is: textOf(raw.is) ?? like?.is ?? id,
    ...bareReading,
    measure: cut.measure,
    from,
    like: like?.id ?? null,
    usual: readUsual(raw, path, cut.one, like, context),
    normal: cut.normal,
    source: textOf(raw.source) ?? like?.source ?? null,
  };
  const isLikeNothing = 'like' in raw && like === null;
  if (cut.normal !== 'any' && reading.source === null && !('source' in raw) && !isLikeNothing) {
    context.atKey(path, { code: 'missing-source', reading: id });
  }
  return isDerived ? reading : { ...reading, ...takenWith(raw, path, like, known, context) };
}

/** What a reading that somebody takes has, and a derived one has not. */
const takenKeys = ['each', 'after', 'when', 'only if', 'power', 'with', 'set', 'points', 'minutes', 'wait'];

function checkDerived(raw: RawTable, path: Path, context: FactsContext): void {
  for (const key of takenKeys.filter((one) => one in raw)) {
    context.atKey([...path, key], { code: 'derived-key', key, compares: false });
  }
}

function takenWith(raw: RawTable, path: Path, like: Reading | null, known: Known, context: FactsContext) {
  const power = raw.power === 'on' || raw.power === 'off' ? raw.power : null;
  return {
    when:
      'when' in raw ? readWhen(raw.when, [...path, 'when'], known.conditions, context) : (like?.when ?? {}),
    power: power ?? like?.power ?? null,
    with: 'with' in raw ? readWith(raw.with, [...path, 'with'], known.tools, context) : (like?.with ?? []),
    set: textOf(raw.set) ?? like?.set ?? null,
    points: 'points' in raw ? textsOf(raw.points) : (like?.points ?? []),
    minutes: numberOf(raw.minutes) ?? like?.minutes ?? known.minutes,
    wait: 'wait' in raw ? readMinutes(raw.wait) : (like?.wait ?? 0),
  };
}

function fromOf(raw: RawTable, path: Path, like: Reading | null, context: FactsContext): Formula | null {
  const text = textOf(raw.from);
  if (text !== null) return readFrom(text, [...path, 'from'], context);
  // Something that is taken in a way of its own is not computed as the other one is.
  const isTaken = ['options', 'codes', 'beeps', 'tries', 'each'].some((key) => key in raw);
  return isTaken || 'from' in raw ? null : (like?.from ?? null);
}

interface Cut {
  readonly measure: Measure;
  /** What one of them shows, where there are many alike. */
  readonly one: One;
  readonly normal: Reading['normal'];
}

function readCut(
  id: string,
  raw: RawTable,
  path: Path,
  like: Reading | null,
  from: Formula | null,
  known: Known,
  context: FactsContext,
): Cut {
  const likeMeasure = like?.measure ?? null;
  const likeEach = likeMeasure?.kind === 'each' ? likeMeasure : null;
  const likeOne = likeMeasure?.kind === 'each' ? likeMeasure.of : likeMeasure;
  const before = context.diagnostics.length;
  const one = readMeasure(raw, path, { like: likeOne, from }, known, context);
  if (context.diagnostics.length > before || isUnsureLike(raw, like, context)) context.unsure.add(id);
  const normalLike = likeEach?.normal ?? like?.normal ?? null;
  const normal = readNormal(raw, path, { id, measure: one }, normalLike, context);
  const members = 'each' in raw ? readMembers(raw.each, [...path, 'each'], context) : likeEach?.members;
  if (members === undefined || members.length === 0 || from !== null) return { measure: one, one, normal };
  if (one.kind === 'tries') {
    if ('each' in raw) context.atKey(path, { code: 'one-measure', of: 'reading', found: ['tries', 'each'] });
    return { measure: one, one, normal };
  }
  return { measure: manyAlike(members, one, normal, path, context), one, normal: [allNormal] };
}

const isUnsureLike = (raw: RawTable, like: Reading | null, context: FactsContext): boolean =>
  like !== null && !hasOwnKind(raw) && context.unsure.has(like.id);

/** What a known-good board shows. */
function readUsual(
  raw: RawTable,
  path: Path,
  one: One,
  like: Reading | null,
  context: FactsContext,
): StoredQuantity | null {
  const text = textOf(raw.usual);
  const place = [...path, 'usual'];
  if (text === null) return one.kind === 'quantity' ? (like?.usual ?? null) : null;
  if (one.kind !== 'quantity') {
    const id = String(path.at(-1));
    if (!context.unsure.has(id)) context.atValue(place, { code: 'usual-not-quantity', reading: id });
    return null;
  }
  const quantity = readWritten(text, one.unit);
  if (!quantity.ok) textProblems(text, place, 'value', quantity.problems, context);
  return quantity.ok ? quantity.value : null;
}
