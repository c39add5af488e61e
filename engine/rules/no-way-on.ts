import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LinkedSection } from '../link/linked-tree.ts';
import { reach, reversed } from './reach.ts';
import type { Rule } from './rule.ts';
import { waysOf } from './ways-of.ts';

/** A loop from which neither a fault nor a stop can be reached keeps the technician for ever. One without a check is told as such: tasks
 *  and calls have one way on, so that no loop of them has a way out. */
export const noWayOn: Rule = (tree) => {
  if (tree.open.has('ways')) return [];
  const ways = waysOf(tree);
  const ends = [...ways].filter(([, targets]) => targets.length === 0).map(([id]) => id);
  const leadsOn = reach(ends, reversed(ways));
  const stuck = tree.sections.filter(({ section }) => !leadsOn.has(section.id));
  return loopsAmong(stuck, ways).map((loop) => ({
    code: loop.some(({ section }) => section.kind === 'check') ? 'no-way-on' : 'loop-without-reading',
    titles: loop.map(({ section }) => section.title),
    span: loop[0].titleSpan,
  })) satisfies Diagnostic[];
};

type Loop = readonly [LinkedSection, ...LinkedSection[]];

/** Every section here leads to others of its kind only, so following the first way from any of them
 *  ends in a loop. */
function loopsAmong(stuck: readonly LinkedSection[], ways: ReadonlyMap<string, readonly string[]>): Loop[] {
  const byId = new Map(stuck.map((linked) => [linked.section.id, linked]));
  const walked = new Set<LinkedSection>();
  return stuck.flatMap((start) => {
    const walk: LinkedSection[] = [];
    let at: LinkedSection | undefined = start;
    while (at !== undefined && !walked.has(at)) {
      walked.add(at);
      walk.push(at);
      at = byId.get(ways.get(at.section.id)?.[0] ?? '');
    }
    const from = at === undefined ? -1 : walk.indexOf(at);
    const [first, ...others] = from < 0 ? [] : walk.slice(from);
    return first === undefined ? [] : [[first, ...others] as const];
  });
}
