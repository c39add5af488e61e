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

type Shown = Pick<Observation, 'understood' | 'bands'> & { readonly doubt?: Observation['doubt'] };

/** The pointers for what was understood: one, with the width of its doubt; one for each of many alike; none for words and
 *  codes. */
export function pointersOf(shown: Shown, face: Face): readonly Pointer[] {
  const { understood } = shown;
  const all = understood.kind === 'each' ? understood.members : [shown];
  return all.map((one) => pointerOf(one, face)).filter((pointer) => pointer !== null);
}

/** An overload lies anywhere above the last limit, unless it says nothing at all. */
function pointerOf({ understood, bands, doubt = null }: Shown, { limits }: Face): Pointer | null {
  if (understood.kind === 'overload')
    return bands.length === 1 ? { from: limits.at(-1) ?? null, to: null } : null;
  if (understood.kind === 'quantity') {
    const at = numberOf(understood.quantity);
    const off = doubt === null ? 0 : numberOf(doubt.plusMinus);
    return { from: at - off, to: at + off, at };
  }
  if (understood.kind !== 'interval') return null;
  const end = (exact: string | null) => (exact === null ? null : fractionOf(exact).valueOf());
  return { from: end(understood.from), to: end(understood.to) };
}
