import type { StoredQuantity } from '../../engine/model/exact.ts';
import type { Observation } from '../../engine/model/observation.ts';
import type { ResolvedScale } from '../../engine/model/resolved-scale.ts';
import { fractionOf, quantityParts } from '../../engine/quantity/index.ts';
import { asShown } from '../parts/as-shown.ts';
import type { Pointer } from '../parts/needle.tsx';
import type { Face } from '../parts/scale-geometry.ts';

/** A scale as the gauge draws it. */
export interface GaugeFace {
  readonly face: Face;
  readonly labels: readonly string[];
  readonly unit: string;
  readonly nominal: number | null;
}

const numberOf = (quantity: StoredQuantity): number => fractionOf(quantity.value).valueOf();

/** The face of a scale at the present settings; null while a limit is not known or they contradict. */
export function gaugeOf(scale: ResolvedScale, normal: readonly string[]): GaugeFace | null {
  const limits = scale.limits.filter((limit) => limit !== null);
  if (limits.length < scale.limits.length || scale.contradiction !== null) return null;
  const labels = limits.map((limit) => quantityParts({ ...limit, unit: scale.unit }).number);
  return {
    face: { bands: scale.bands, limits: limits.map(numberOf), normal },
    labels: labels.map(asShown),
    unit: scale.unit,
    nominal: scale.nominal === null ? null : numberOf(scale.nominal),
  };
}

/** Where the pointer stands for what was understood; null for words and codes. An overload lies anywhere
 *  above the last limit, unless it says nothing at all. */
export function pointerOf({ understood, bands }: Observation, { limits }: Face): Pointer | null {
  if (understood.kind === 'overload')
    return bands.length === 1 ? { from: limits.at(-1) ?? null, to: null } : null;
  if (understood.kind === 'quantity') {
    const value = numberOf(understood.quantity);
    return { from: value, to: value };
  }
  if (understood.kind !== 'interval') return null;
  const end = (exact: string | null) => (exact === null ? null : fractionOf(exact).valueOf());
  return { from: end(understood.from), to: end(understood.to) };
}
