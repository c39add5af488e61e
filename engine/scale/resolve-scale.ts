import type Fraction from 'fraction.js';
import { evaluateFormula } from '../formula/index.ts';
import type { StoredQuantity } from '../model/exact.ts';
import type { Present } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { compareQuantities, fromStored, printQuantity, toStored } from '../quantity/index.ts';
import { bandsOf, normalBandsOf } from './bands-of.ts';
import { middleOfNormal } from './middle-of-normal.ts';
import { settingsOf } from './settings-of.ts';

const fixed = new WeakMap<Reading, ResolvedScale>();

/** A reading's scale at the present settings. Options and codes have bands without limits. */
export function resolveScale(reading: Reading, present: Present): ResolvedScale {
  const known = fixed.get(reading);
  if (known) return known;
  const resolved = resolve(reading, present);
  if (settingsOf(reading).length === 0) fixed.set(reading, resolved);
  return resolved;
}

function resolve(reading: Reading, present: Present): ResolvedScale {
  const { measure } = reading;
  const bands = bandsOf(reading);
  if (measure.kind !== 'quantity') {
    return { unit: '', bands, limits: [], owners: [], nominal: null, missing: [], contradiction: null };
  }
  const { unit, scale } = measure;
  const missing = new Set<string>();
  const lookUp = (name: string): Fraction | null => {
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
    contradiction: contradiction ?? wrongOrder(limits),
  };
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
