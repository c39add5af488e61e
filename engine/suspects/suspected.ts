import type { Hypothesis } from './belief.ts';
import type { BeliefOptions } from './belief-options.ts';
import { unlistedAnswerer, type Weighing } from './weighing.ts';

/** Whom a belief is about, and how likely each is before anything is read. */
export interface Suspected {
  /** Places of the faults that are among the suspects, in the tree's order. */
  readonly singles: readonly number[];
  readonly pairs: boolean;
  readonly none: number;
  /** How many hypotheses there are: every fault, every pair, none of these. */
  readonly size: number;
  readonly hypotheses: readonly Hypothesis[];
  /** Who answers under each hypothesis. */
  readonly own: readonly (readonly number[])[];
  readonly priors: Float64Array;
}

/**
 * The prior of a fault is its weight among all that are suspected; of two at once the product of both, or what the one brings along of
 * the other; together 1 − unlisted. What a fault that was mended on this board brings along is as likely as that at least.
 */
export function suspectedIn(weighing: Weighing, options: BeliefOptions): Suspected {
  const ofWeighing = known.get(weighing) ?? new Map<string, Suspected>();
  known.set(weighing, ofWeighing);
  const { aside = [], mended = [], pairs = false, boardClass = null } = options;
  const key = JSON.stringify([[...aside].sort(), [...mended].sort(), pairs, boardClass]);
  const before = ofWeighing.get(key);
  if (before !== undefined) return before;
  const made = suspectedAmong(weighing, options);
  ofWeighing.set(key, made);
  return made;
}

const known = new WeakMap<Weighing, Map<string, Suspected>>();

function suspectedAmong(weighing: Weighing, options: BeliefOptions): Suspected {
  const { tree, odds } = weighing;
  const { aside = new Set<string>(), mended = new Set<string>(), pairs = false, boardClass = null } = options;
  const singles = tree.faults.flatMap(({ id }, place) => (aside.has(id) ? [] : [place]));
  const weights = singles.map((place) => {
    const fault = tree.faults[place];
    return Math.max(0, (boardClass === null ? undefined : fault?.weights[boardClass]) ?? fault?.weight ?? 0);
  });
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const alone = weights.map((weight, at) => {
    const share = total > 0 ? weight / total : 1 / weights.length;
    const id = tree.faults[singles[at] ?? -1]?.id ?? '';
    const brought = tree.faults
      .filter((fault) => mended.has(fault.id))
      .map((fault) => fault.brings?.[id] ?? 0);
    return 1 - brought.reduce((left, one) => left * (1 - one), 1 - share);
  });
  const raw = [...alone];
  const own: (readonly number[])[] = singles.map((place) => [place]);
  if (pairs) addPairs();
  const sum = raw.reduce((all, one) => all + one, 0);
  const none = unlistedAnswerer(tree);
  const listed = sum > 0 ? 1 - odds.unlisted : 0;
  const priors = Float64Array.from([...raw.map((one) => (one / (sum || 1)) * listed), 1 - listed]);
  return {
    singles,
    pairs,
    none,
    size: priors.length,
    hypotheses: [...own, []].map((places) => ({
      faults: places.flatMap((place) => tree.faults[place] ?? []),
    })),
    own: [...own, [none]],
    priors,
  };

  function addPairs(): void {
    for (let first = 0; first < singles.length; first++) {
      for (let second = first + 1; second < singles.length; second++) {
        const there = bringing(first, second);
        const back = bringing(second, first);
        own.push([singles[first] ?? 0, singles[second] ?? 0]);
        raw.push(
          there === null && back === null
            ? (alone[first] ?? 0) * (alone[second] ?? 0)
            : (alone[first] ?? 0) * (there ?? 0) + (alone[second] ?? 0) * (back ?? 0),
        );
      }
    }
    // A fault that brings another along in half of the cases comes alone in the other half.
    singles.forEach((place, at) => {
      for (const [id, share] of Object.entries(tree.faults[place]?.brings ?? {})) {
        const isSuspected = singles.some((one) => tree.faults[one]?.id === id);
        if (isSuspected) raw[at] = (raw[at] ?? 0) * (1 - share);
      }
    });
  }

  function bringing(from: number, to: number): number | null {
    const id = tree.faults[singles[to] ?? -1]?.id ?? '';
    return tree.faults[singles[from] ?? -1]?.brings?.[id] ?? null;
  }
}
