import { reach } from './reach.ts';
import type { Rule } from './rule.ts';
import { waysOf } from './ways-of.ts';

/** A walk begins at the first section; what it cannot come to is of no use. */
export const unreachableSection: Rule = (tree) => {
  const [first] = tree.sections;
  if (first === undefined || tree.open.has('ways')) return [];
  const reached = reach([first.section.id], waysOf(tree));
  return tree.sections
    .filter(({ section }) => !reached.has(section.id))
    .map(({ section, titleSpan }) => ({
      code: 'unreachable-section',
      title: section.title,
      span: titleSpan,
    }));
};
