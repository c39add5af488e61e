import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import { type Drawn, type Draws, drawsOf } from '../suspects/draws.ts';
import { possibleUsually } from '../suspects/possible-usually.ts';
import { diceOf } from './dice.ts';

/** The bands of one board, drawn as they are asked for. Which is asked first changes nothing: whatever a band depends on is drawn
 *  before it, each from a stream of its own. */
export class DrawnBands {
  #drawn: Drawn = new Map();
  readonly #draws: Draws;
  readonly #seed: number;
  readonly #name: string | number;
  readonly #under = new Set<string>();

  /** @param name parts this board's streams from those of others with the same seed */
  constructor(tree: CompiledTree, fault: Fault, seed: number, name: string | number) {
    this.#draws = drawsIn(tree, fault);
    this.#seed = seed;
    this.#name = name;
  }

  bandOf(reading: string): string {
    const known = this.#draws.bandOf(reading, this.#drawn);
    if (known !== undefined) return known;
    const [key = reading, ...before] = this.#draws.roots(reading);
    this.#under.add(key);
    // A circle of needs is reported elsewhere; here it must only come to an end.
    for (const root of before) if (!this.#under.has(root)) this.bandOf(root);
    this.#under.delete(key);
    const ways = this.#draws.draw(reading, this.#drawn);
    const way = diceOf(this.#seed, ['band', this.#name, key]).weighted(ways, ({ share }) => share);
    this.#drawn = way.drawn;
    return this.#draws.bandOf(reading, this.#drawn) ?? '';
  }
}

const known = new WeakMap<CompiledTree, Map<Fault, Draws>>();

/** What a fault shows is worked out once for each tree. */
function drawsIn(tree: CompiledTree, fault: Fault): Draws {
  const ofTree = known.get(tree) ?? new Map<Fault, Draws>();
  known.set(tree, ofTree);
  const draws = ofTree.get(fault) ?? drawsOf(tree, fault, possibleUsually(tree, fault));
  ofTree.set(fault, draws);
  return draws;
}
