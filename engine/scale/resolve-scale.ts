import type Fraction from 'fraction.js';
import { boundsOf, evaluateFormula, exactly } from '../formula/index.ts';
import type { Exact, StoredQuantity } from '../model/exact.ts';
import type { Formula } from '../model/formula.ts';
import type { Present, Twin } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { compareQuantities, exactOf, fromStored, printQuantity, toStored } from '../quantity/index.ts';
import { bandsOf, normalBandsOf } from './bands-of.ts';
import { middleOfNormal } from './middle-of-normal.ts';
import { settingsOf, usesTwin } from './settings-of.ts';
import { twinName, twinOf } from './twin-of.ts';

interface Resolved extends Present {
  /** Its limits rest on no setting and no twin. */
  readonly isFixed: boolean;
  readonly scale: ResolvedScale;
}

/** As last resolved: a reading is judged and drawn many times before anything is set. */
const known = new WeakMap<Reading, Resolved>();

/** A reading's scale at the present settings. What is no quantity has bands without limits; the limits of many alike are
 *  those of `memberReading`. */
export function resolveScale(reading: Reading, present: Present): ResolvedScale {
  const before = known.get(reading);
  if (before !== undefined && (before.isFixed || isSame(before, present))) return before.scale;
  const { settings, twins } = present;
  const scale = resolve(reading, present);
  const isFixed = settingsOf(reading).length === 0 && !usesTwin(reading);
  known.set(reading, { settings, twins, isFixed, scale });
  return scale;
}

const isSame = (a: Present, b: Present): boolean => a.settings === b.settings && a.twins === b.twins;

const withoutLimits = {
  unit: '',
  limits: [],
  owners: [],
  nominal: null,
  missing: [],
  twin: null,
  limitDoubts: [],
  contradiction: null,
} satisfies Omit<ResolvedScale, 'bands'>;

function resolve(reading: Reading, present: Present): ResolvedScale {
  const { measure } = reading;
  const bands = bandsOf(reading);
  if (measure.kind !== 'quantity') return { ...withoutLimits, bands };
  const { unit, scale } = measure;
  const missing = new Set<string>();
  const twin = usesTwin(reading) ? twinOf(reading, present) : null;
  const lookUp = (name: string): Fraction | null => {
    if (name === twinName) return twin && fromStored(twin.value);
    const value = present.settings.get(name);
    return value === undefined || value === null || typeof value === 'string' ? null : fromStored(value);
  };
  let contradiction: string | null = null;
  const limits = scale.limits.map((limit): StoredQuantity | null => {
    const found = evaluateFormula(limit, lookUp);
    if (found.kind === 'value') return toStored(found.value, unit);
    if (found.kind === 'missing') for (const name of found.names) missing.add(name);
    else contradiction = `A limit of "${scale.written}" divides by zero at these settings`;
    return null;
  });
  const nominal = scale.nominal && evaluateFormula(scale.nominal, lookUp);
  const normal = normalBandsOf(reading);
  return {
    unit,
    bands,
    limits,
    owners: limits.map((_, at) =>
      owner(normal.includes(bands[at] ?? ''), normal.includes(bands[at + 1] ?? '')),
    ),
    nominal:
      nominal?.kind === 'value' ? toStored(nominal.value, unit) : middleOfNormal(bands, limits, normal, unit),
    missing: [...missing],
    twin,
    limitDoubts: limits.map((limit, at) => limitDoubt(scale.limits[at], limit, twin, lookUp)),
    contradiction: contradiction ?? wrongOrder(limits),
  };
}

/** How far a limit goes up or down with the twin's value, where that can be off. */
function limitDoubt(
  formula: Formula | undefined,
  limit: StoredQuantity | null,
  twin: Twin | null,
  lookUp: (name: string) => Fraction | null,
): Exact | null {
  if (formula === undefined || limit === null || twin?.plusMinus === undefined) return null;
  const off = fromStored(twin.plusMinus);
  const value = fromStored(twin.value);
  const { low, high } = boundsOf(formula, (name) =>
    name === twinName
      ? {
          ...exactly(value),
          low: { value: value.sub(off), closed: true },
          high: { value: value.add(off), closed: true },
        }
      : exactly(lookUp(name) ?? value),
  );
  if (low === null || high === null) return null;
  const middle = fromStored(limit);
  const [down, up] = [middle.sub(low.value), high.value.sub(middle)];
  const most = down.gt(up) ? down : up;
  return most.n === 0n ? null : exactOf(most);
}

/** A limit belongs to the normal neighbour; with two or none, to the upper one. */
const owner = (belowIsNormal: boolean, aboveIsNormal: boolean): 'below' | 'above' =>
  belowIsNormal && !aboveIsNormal ? 'below' : 'above';

function wrongOrder(limits: readonly (StoredQuantity | null)[]): string | null {
  let below: StoredQuantity | null = null;
  for (const limit of limits) {
    if (limit === null) continue;
    if (below !== null && compareQuantities(below, limit) >= 0) {
      return `The limits come out in the wrong order at these settings: ${printQuantity(below)}, then ${printQuantity(limit)}`;
    }
    below = limit;
  }
  return null;
}
