import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Which } from './matrix/columns-of.ts';
import { type TreeMatrix, treeMatrix } from './matrix/tree-matrix.ts';
import { BestOrder, bestAction, type Found } from './order/best-order.ts';
import type { State } from './order/state.ts';

/** One thing to do in an order: readings to take, and tasks to do before them, by id. */
export interface OrderStep {
  readonly take: readonly string[];
  /** With waiting, and with what it takes to bring the board into other conditions. */
  readonly minutes: number;
}

/** The search for the best order of what a tree can take. */
export class TreeOrder {
  readonly tree: TreeMatrix;
  readonly #search: BestOrder;

  constructor(tree: CompiledTree, board: CompiledBoard | null = null, which: Which = 'taken') {
    this.tree = treeMatrix(tree, board, which);
    this.#search = new BestOrder(this.tree.matrix);
  }

  get found(): Found {
    return this.#search.found;
  }

  advance(states: number): Found {
    return this.#search.advance(states);
  }

  /** The best order found on a board that answers like this.
   *  @param bandOf the band that the board shows in a reading */
  follow(bandOf: (reading: string) => string): readonly OrderStep[] {
    return this.#steps((state) => {
      const action = bestAction(state);
      const column = action?.columns.at(-1) ?? -1;
      const band = this.tree.bands[column]?.get(bandOf(this.tree.columns[column]?.id ?? ''));
      const [only, ...others] = action?.ways ?? [];
      if (others.length === 0) return only?.to ?? null;
      return action?.ways.find((way) => way.band === band)?.to ?? null;
    });
  }

  /** The best order found, where the likeliest happens every time. */
  likeliest(): readonly OrderStep[] {
    return this.#steps((state) => {
      const ways = bestAction(state)?.ways ?? [];
      return ways.toSorted((one, other) => other.share - one.share)[0]?.to ?? null;
    });
  }

  #steps(next: (state: State) => State | null): readonly OrderStep[] {
    const steps: OrderStep[] = [];
    for (let state: State | null = this.#search.start; state !== null; state = next(state)) {
      const action = bestAction(state);
      if (action === null) break;
      const take = action.columns.map((column) => this.tree.columns[column]?.id ?? '');
      steps.push({ take, minutes: action.minutes });
    }
    return steps;
  }
}
