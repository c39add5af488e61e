import type { TreeWalk } from '../tree-walks.ts';
import { total } from '../walk-minutes.ts';
import type { Evidence } from './evidence.ts';

/** What a section costs and tells on the way. */
export interface SectionWorth {
  readonly section: string;
  /** Share of all boards that come here. 0..1. */
  readonly reach: number;
  /** Minutes of each board that comes here, waiting included; a second visit counts too. */
  readonly minutes: number;
  /** What its readings tell of where the walk must end, in bits, of those that come here. */
  readonly bits: number;
  /** Readings that somebody takes here for the first time. */
  readonly fresh: ReadonlySet<string>;
}

/** @param weights how likely each walk is; they add up to 1 */
export function sectionWorths(
  walks: readonly TreeWalk[],
  weights: readonly number[],
  evidence: Evidence,
): readonly SectionWorth[] {
  const at = new Map<
    string,
    { reach: number; spent: number; fresh: Set<string>; ends: Ends; told: Map<string, Ends> }
  >();
  walks.forEach((walk, index) => {
    const { steps, end } = walk;
    const weight = weights[index] ?? 0;
    const seen = new Set<string>();
    for (const step of steps) {
      const here = at.get(step.section) ?? {
        reach: 0,
        spent: 0,
        fresh: new Set(),
        ends: new Map(),
        told: new Map(),
      };
      at.set(step.section, here);
      here.spent += weight * total(step);
      for (const id of step.fresh) here.fresh.add(id);
      if (seen.has(step.section)) continue;
      seen.add(step.section);
      here.reach += weight;
      add(here.ends, end, weight);
      for (const { key, share } of evidence.hereOf(walk, step)) {
        const told = here.told.get(key) ?? new Map<string, number>();
        here.told.set(key, told);
        add(told, end, weight * share);
      }
    }
  });
  return [...at].map(([section, { reach, spent, fresh, ends, told }]) => ({
    section,
    reach,
    minutes: reach > 0 ? spent / reach : 0,
    bits:
      reach > 0
        ? Math.max(0, doubt(ends) - [...told.values()].reduce((sum, each) => sum + doubt(each), 0)) / reach
        : 0,
    fresh,
  }));
}

/** Weight by the section that walks end at. */
type Ends = Map<string, number>;

const add = (ends: Ends, end: string, weight: number): void =>
  void ends.set(end, (ends.get(end) ?? 0) + weight);

/** Bits times weight. */
function doubt(ends: Ends): number {
  const all = [...ends.values()].reduce((sum, weight) => sum + weight, 0);
  let bits = 0;
  for (const weight of ends.values()) if (weight > 0) bits -= weight * Math.log2(weight / all);
  return bits;
}
