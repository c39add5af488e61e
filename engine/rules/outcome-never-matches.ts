import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { type Coverage, coverages } from './coverages.ts';
import type { Rule } from './rule.ts';

/** A line whose every combination is taken by the lines above it is dead. */
export const outcomeNeverMatches: Rule = (tree) =>
  coverages(tree)
    .filter(({ taken }) => taken.includes(null))
    .flatMap(dead);

function dead({ check, linked, lines, taken }: Coverage): Diagnostic[] {
  return lines.flatMap((line, index) => {
    const outcome = check.outcomes[line];
    const span = linked.outcomeSpans[line];
    if (taken[index] !== null || outcome === undefined || span === undefined) return [];
    return [{ code: 'outcome-never-matches' as const, written: outcome.written, span }];
  });
}
