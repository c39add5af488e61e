import type { CompiledTree } from '../../model/compiled-tree.ts';
import type { TreeWalk } from '../tree-walks.ts';
import { total } from '../walk-minutes.ts';
import { EndsSeen } from './ends-seen.ts';
import type { Evidence } from './evidence.ts';
import { isInProcedure } from './is-in-procedure.ts';

/** Boards of which one fault is left after a section, and which are walked on all the same. */
export interface Decided {
  /** The section that decided it. */
  readonly section: string;
  /** The section of the fault that is left. */
  readonly end: string;
  /** Share of all boards. 0..1. */
  readonly share: number;
  /** Expected minutes of all boards that are spent after it. */
  readonly saves: number;
}

/** Minutes after the last reading that could make a difference: all boards on which the same was seen end at the same fault. What procedures
 *  take on the way is not counted. */
export function decidedEarly(
  tree: CompiledTree,
  walks: readonly TreeWalk[],
  weights: readonly number[],
  evidence: Evidence,
): readonly Decided[] {
  const faults = new Set(tree.sections.flatMap(({ id, kind }) => (kind === 'fault' ? [id] : [])));
  const ends = new EndsSeen();
  const seen = walks.map((walk) => {
    const bands = new Map<string, string>();
    return walk.steps.map((step) => {
      const before = evidence.keyOf(bands);
      const here = evidence
        .hereOf(walk, step)
        .map(({ key, share }) => ({ key: `${before}\n\n${key}`, share }));
      for (const { key } of here) ends.note(key, walk.end);
      for (const [reading, band] of Object.entries(step.bands)) bands.set(reading, band);
      return here;
    });
  });
  const found = new Map<string, { section: string; end: string; share: number; saves: number }>();
  walks.forEach(({ steps, end }, walk) => {
    if (!faults.has(end)) return;
    let open = weights[walk] ?? 0;
    for (const [at, { section }] of steps.entries()) {
      const here = seen[walk]?.[at] ?? [];
      const decided = here.reduce((sum, { key, share }) => (ends.areOne(key) ? sum + share : sum), 0);
      const rest = steps
        .slice(at + 1)
        .reduce((sum, step) => (isInProcedure(step.section) ? sum : sum + total(step)), 0);
      if (rest === 0 || open < 1e-12) break;
      if (decided === 0 || isInProcedure(section)) continue;
      const key = JSON.stringify([section, end]);
      const one = found.get(key) ?? { section, end, share: 0, saves: 0 };
      one.share += open * decided;
      one.saves += open * decided * rest;
      found.set(key, one);
      open *= 1 - decided;
    }
  });
  return [...found.values()].toSorted((one, other) => other.saves - one.saves);
}
