import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import { adviceOf } from './advice/advice-of.ts';
import { alongTree } from './along-tree.ts';
import { faultShares } from './fault-shares.ts';
import type { Figures, TestabilityFigures } from './figures.ts';
import { groupFigures } from './group-figures.ts';
import type { TreeMatrix } from './matrix/tree-matrix.ts';
import type { Found } from './order/best-order.ts';
import { type Testability, testabilityOf } from './testability/testability-of.ts';
import { treeSigns } from './testability/tree-signs.ts';
import { TreeOrder } from './tree-order.ts';
import { treeWalks } from './tree-walks.ts';
import { usualSettings } from './usual-settings.ts';

export interface FiguresOptions {
  readonly board?: CompiledBoard | null;
  /** States that the search for the best order may look into. */
  readonly budget?: number;
  readonly onProgress?: (progress: Progress) => void;
  /** Ends the search before its budget: what was found so far is given. */
  readonly stop?: () => boolean;
}

/** How far the search for the best order has come. */
export type Progress = Found & { readonly budget: number };

/** A few seconds for a tree of 45 faults. */
const usualBudget = 3000;

/** States between two looks at the clock. */
const stride = 20;

/** All figures of a tree. Where the budget of the search ends first, the best order found and a bound are given as such. */
export function figuresOf(tree: CompiledTree, options: FiguresOptions = {}): Figures {
  const { onProgress, stop = () => false } = options;
  const steps = figuresInSteps(tree, options);
  for (let step = steps.next(); ; step = steps.next(stop())) {
    if (step.done === true) return step.value;
    onProgress?.(step.value);
  }
}

/** The same in steps of some milliseconds, for whoever has something else to do in between. A step that is given true ends the
 *  search. */
export function* figuresInSteps(
  tree: CompiledTree,
  { board = null, budget = usualBudget }: Pick<FiguresOptions, 'board' | 'budget'> = {},
): Generator<Progress, Figures, boolean> {
  const order = new TreeOrder(tree, board);
  let found = order.advance(1);
  while (!found.exact && found.looked < budget) {
    if (yield { ...found, budget }) break;
    found = order.advance(Math.min(stride, budget - found.looked));
  }
  const settings = usualSettings(tree);
  const shares = faultShares(tree, board);
  const walks = treeWalks(tree, board, settings);
  const taken = treeSigns(tree, board, 'taken');
  const declared = treeSigns(tree, board, 'declared');
  const told = { taken: testabilityOf(taken.signs), declared: testabilityOf(declared.signs) };
  return {
    kind: 'figures',
    tree: tree.id,
    title: tree.title,
    digest: tree.digest,
    settings,
    along: alongTree(tree, shares, walks),
    best: { ...found, begins: order.likeliest(), silent: order.tree.silent },
    testability: {
      taken: named(tree, told.taken, taken.of),
      declared: named(tree, told.declared, declared.of),
    },
    groups: groupFigures(tree, told.taken.groups, shares, { taken: taken.of, declared: declared.of }),
    ...adviceOf(tree, walks, shares),
  };
}

function named(
  { faults }: CompiledTree,
  { detected, isolated, meanGroup, sometimes }: Testability,
  { columns }: TreeMatrix,
): TestabilityFigures {
  const id = (place: number): string => faults[place]?.id ?? '';
  return {
    readings: columns.filter(({ reading }) => reading !== null).length,
    detected,
    isolated,
    meanGroup,
    sometimes: sometimes.map(({ fault, other, share }) => ({ fault: id(fault), other: id(other), share })),
  };
}
