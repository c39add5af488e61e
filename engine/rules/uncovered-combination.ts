import type { Box } from '../combinations/box.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Example } from '../diagnostics/tree-rule-facts.ts';
import type { LinkedTree } from '../link/linked-tree.ts';
import { namesAt } from '../paths/live-names.ts';
import { pathsOf } from '../paths/paths-of.ts';
import { type Coverage, coverages } from './coverages.ts';
import type { Rule } from './rule.ts';

/** Every combination of bands that a check can meet must lead somewhere. What no walk can bring here need not; that is
 *  looked up only where it could matter, so that most trees are judged check by check. */
export const uncoveredCombination: Rule = (tree) =>
  coverages(tree)
    .filter(({ exact, left }) => !exact || left.length > 0)
    .flatMap((coverage) => uncovered(coverage, tree));

function uncovered({ check, linked, left, exact, all }: Coverage, tree: LinkedTree): Diagnostic[] {
  const span = linked.leadSpan;
  if (!exact) return [{ code: 'too-many-combinations', title: check.title, span }];
  const met = dependsOnWalks(check.id, Object.keys(all), tree)
    ? pathsOf(tree)?.checks.get(check.id)
    : undefined;
  const boxes = met?.left ?? left;
  const [first] = boxes;
  if (first === undefined) return [];
  const combinations = boxes.reduce((sum, box) => sum + sizeOf(box), 0);
  return [{ code: 'uncovered-combination', example: exampleOf(first, all), combinations, span }];
}

/** Whether one of the names is computed from others, or decides or is read elsewhere too. */
function dependsOnWalks(check: string, names: readonly string[], { facts, sections }: LinkedTree): boolean {
  const elsewhere = new Set(
    sections.flatMap(({ section }) => (section.id === check ? [] : namesAt(section))),
  );
  const computed = new Set(facts.readings.flatMap(({ id, from }) => (from === null ? [] : [id])));
  return names.some((name) => elsewhere.has(name) || computed.has(name));
}

const sizeOf = (box: Box): number => Object.values(box).reduce((size, bands) => size * bands.length, 1);

/** One combination of the box. Names whose band does not matter are left out. */
function exampleOf(box: Box, all: Box): Example {
  const names = Object.keys(box);
  const telling = names.filter((name) => (box[name]?.length ?? 0) < (all[name]?.length ?? 0));
  return (telling.length > 0 ? telling : names).map((name) => ({ name, band: box[name]?.[0] ?? '' }));
}
