import { figuresOf } from '../../engine/figures/figures-of.ts';
import { BestOrder } from '../../engine/figures/order/best-order.ts';
import { randomMatrix } from '../helpers/random-matrix.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';
import type { Figure } from './figure.ts';

const seeds = 12;

/** The best order of 20 faults and 20 checks to its end, with faults that show several bands in every tenth and every fifth check; the worst
 *  of some seeds. And all figures of the shipped trees within the usual budget. */
export async function bench(): Promise<readonly Figure[]> {
  const orders = [0, 0.1, 0.2].map((shared) => ({
    name: `20 × 20, ${shared * 100} % of the cells shared, best order; worst of ${seeds} seeds`,
    value: Math.max(...Array.from({ length: seeds }, (_, seed) => took(() => solve(seed + 1, shared)))),
    unit: 'ms',
    goal: 2000,
  }));
  return [...orders, ...shippedTrees.flatMap(({ id, tree }) => (tree === null ? [] : figuresOn(id, tree)))];
}

function solve(seed: number, shared: number): void {
  const search = new BestOrder(randomMatrix(seed, { faults: 20, checks: 20, shared, ordered: 0 }));
  if (!search.advance(1_000_000).exact) throw new Error(`expected seed ${seed} to come to an end`);
}

function figuresOn(id: string, tree: Parameters<typeof figuresOf>[0]): readonly Figure[] {
  const begun = performance.now();
  const { along, best } = figuresOf(tree);
  const time = performance.now() - begun;
  const minutes = along.expected.handsOn + along.expected.waiting;
  return [
    { name: `${id}, all figures, usual budget`, value: time, unit: 'ms', goal: null },
    { name: `${id}, along the tree, expected`, value: minutes, unit: 'min', goal: null },
    {
      name: `${id}, best order found${best.exact ? ', exact' : ''}`,
      value: best.high,
      unit: 'min',
      goal: null,
    },
    { name: `${id}, none below`, value: best.low, unit: 'min', goal: null },
  ];
}

function took(work: () => void): number {
  const begun = performance.now();
  work();
  return performance.now() - begun;
}
