import type { CompiledTree } from '../../model/compiled-tree.ts';
import { columnsOf } from '../matrix/columns-of.ts';
import type { TreeWalk } from '../tree-walks.ts';
import { type Decided, decidedEarly } from './decided-early.ts';
import { Evidence } from './evidence.ts';
import { isInProcedure } from './is-in-procedure.ts';
import { type Earlier, movesEarlier } from './moves-earlier.ts';
import { type SectionWorth, sectionWorths } from './section-worth.ts';

/** Something an author can do, dearest first. Minutes are those of all boards, expected. */
export type Advice =
  /** Take a reading before a section. */
  | ({ readonly kind: 'earlier' } & Earlier)
  /** Nobody who comes here learns anything, and nothing later asks for it. */
  | {
      readonly kind: 'tells-nothing';
      readonly section: string;
      readonly reach: number;
      readonly saves: number;
    }
  /** What was read in a section leaves one end only, and the walk goes on all the same. */
  | ({ readonly kind: 'decided' } & Decided);

/** What a section costs and tells, for a table. */
export type SectionFigures = Omit<SectionWorth, 'fresh'>;

export interface TreeAdvice {
  readonly advice: readonly Advice[];
  /** Sections in the order of the tree, those that take time. */
  readonly sections: readonly SectionFigures[];
}

/** Less is not worth changing a tree for, in minutes. */
const least = 0.05;

export function adviceOf(
  tree: CompiledTree,
  walks: readonly TreeWalk[],
  shares: readonly number[],
): TreeAdvice {
  const weights = walks.map(({ fault, share }) => share * (shares[fault] ?? 0));
  const evidence = new Evidence(tree);
  const columns = columnsOf(tree, 'taken');
  const worths = sectionWorths(walks, weights, evidence);
  const asked = new Set(
    columns.flatMap(({ after, only }) => [...after, ...only.map(({ reading }) => reading)]),
  );
  const idle = worths.filter(
    ({ section, bits, fresh }) =>
      bits < 1e-9 &&
      fresh.size > 0 &&
      !isInProcedure(section) &&
      [...fresh].every((id) => !asked.has(id)) &&
      tree.sections.some(({ id, kind }) => id === section && kind === 'check'),
  );
  const advice: readonly Advice[] = [
    ...movesEarlier(tree, columns, walks, weights, evidence).map((one) => ({
      kind: 'earlier' as const,
      ...one,
    })),
    ...decidedEarly(tree, walks, weights, evidence).map((one) => ({ kind: 'decided' as const, ...one })),
    ...idle.map(({ section, reach, minutes }) => ({
      kind: 'tells-nothing' as const,
      section,
      reach,
      saves: reach * minutes,
    })),
  ];
  const place = new Map(tree.sections.map(({ id }, at) => [id, at]));
  return {
    advice: advice.filter(({ saves }) => saves >= least).toSorted((one, other) => other.saves - one.saves),
    sections: worths
      .filter(({ minutes }) => minutes > 0)
      .toSorted((one, other) => (place.get(one.section) ?? 0) - (place.get(other.section) ?? 0))
      .map(({ fresh: _, ...figures }) => figures),
  };
}
