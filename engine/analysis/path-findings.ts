import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LinkedSection, LinkedTree } from '../link/linked-tree.ts';
import type { CheckOnPaths, Paths } from '../paths/paths.ts';
import { coverages } from '../rules/coverages.ts';
import { reach } from '../rules/reach.ts';
import { waysOf } from '../rules/ways-of.ts';

/** Outcomes and sections that arcs lead to but no walk does. What shows in one check alone, or from the arcs, is told by the rules; what
 *  stands in a procedure is right for its other callers. */
export function pathFindings(tree: LinkedTree, paths: Paths): readonly Diagnostic[] {
  const dead = deadAlone(tree);
  const first = tree.sections.slice(0, 1).map(({ section }) => section.id);
  const linked = reach(first, waysOf(tree));
  return tree.sections
    .filter(({ inlined }) => inlined !== true)
    .flatMap((each): readonly Diagnostic[] => {
      const { section, titleSpan } = each;
      if (!paths.reached.has(section.id)) {
        const told = !linked.has(section.id) || section.kind === 'fault';
        return told ? [] : [{ code: 'section-never-entered', title: section.title, span: titleSpan }];
      }
      const check = paths.checks.get(section.id);
      return check === undefined ? [] : deadOnPaths(each, check, dead.get(section.id) ?? new Set());
    });
}

/** Lines that the rules have told already, by check. */
const deadAlone = (tree: LinkedTree): ReadonlyMap<string, ReadonlySet<number>> =>
  new Map(
    coverages(tree).map(({ check, lines, taken }) => [
      check.id,
      new Set(lines.filter((_, at) => taken[at] === null)),
    ]),
  );

function deadOnPaths(
  { section, outcomeSpans }: LinkedSection,
  { taken, known }: CheckOnPaths,
  told: ReadonlySet<number>,
): readonly Diagnostic[] {
  if (section.kind !== 'check') return [];
  return section.outcomes.flatMap(({ condition, written }, line) => {
    const span = outcomeSpans[line];
    if (taken[line] !== false || told.has(line) || span === undefined) return [];
    const asked = condition.kind === 'bands' ? Object.entries(condition.bands) : [];
    const name = asked.find(([id, bands]) => known[id]?.every((band) => !bands.includes(band)))?.[0];
    const why = name === undefined ? null : { name, bands: known[name] ?? [] };
    return [{ code: 'outcome-never-on-a-walk', written, known: why, span }];
  });
}
