import type { Box } from '../combinations/box.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Example } from '../diagnostics/tree-rule-facts.ts';
import { type Coverage, coverages } from './coverages.ts';
import type { Rule } from './rule.ts';

/** Every combination of bands that a check can meet must lead somewhere. */
export const uncoveredCombination: Rule = (tree) => coverages(tree).flatMap(uncovered);

function uncovered({ check, linked, left, exact, all }: Coverage): Diagnostic[] {
  const span = linked.leadSpan;
  if (!exact) return [{ code: 'too-many-combinations', title: check.title, span }];
  const [first] = left;
  if (first === undefined) return [];
  const combinations = left.reduce((sum, box) => sum + sizeOf(box), 0);
  return [{ code: 'uncovered-combination', example: exampleOf(first, all), combinations, span }];
}

const sizeOf = (box: Box): number => Object.values(box).reduce((size, bands) => size * bands.length, 1);

/** One combination of the box. Names whose band does not matter are left out. */
function exampleOf(box: Box, all: Box): Example {
  const names = Object.keys(box);
  const telling = names.filter((name) => (box[name]?.length ?? 0) < (all[name]?.length ?? 0));
  return (telling.length > 0 ? telling : names).map((name) => ({ name, band: box[name]?.[0] ?? '' }));
}
