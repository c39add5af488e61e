import type { Fault } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import { type Drawn, type Draws, drawsOf } from './draws.ts';
import type { PossibleBands } from './possible-bands.ts';
import { hiddenPlace, placesOf, type Shape, silentPlace } from './shape.ts';
import { writtenShares } from './written-shares.ts';

/** What is the same for all faults of a tree. */
export interface Ground {
  readonly readings: readonly Reading[];
  readonly byId: ReadonlyMap<string, Reading>;
  readonly places: ReadonlyMap<string, number>;
  readonly shapes: readonly Shape[];
}

/** One way in which one reading can come out. */
export interface Way {
  readonly drawn: Drawn;
  readonly share: number;
  readonly place: number;
}

const nothing: Drawn = new Map();

/** How a board with one fault answers, as tables. Readings are named by their place in the tree. */
export class Answers {
  readonly fault: Fault;
  readonly #ground: Ground;
  readonly #draws: Draws;
  readonly #tables: (Float64Array | undefined)[] = [];
  readonly #alone: (boolean | undefined)[] = [];
  readonly #ways: (readonly Way[] | undefined)[] = [];
  readonly #roots: (readonly string[] | undefined)[] = [];
  #hanging: ReadonlyMap<string, readonly number[]> | null = null;

  constructor(ground: Ground, fault: Fault, possible: PossibleBands) {
    this.fault = fault;
    this.#ground = ground;
    this.#draws = drawsOf(ground, fault, possible);
  }

  /** The share of each place of the reading's shape; they add up to 1. */
  table(reading: number): Float64Array {
    const before = this.#tables[reading];
    if (before !== undefined) return before;
    const shape = this.#shape(reading);
    const table = new Float64Array(placesOf(shape));
    for (const { drawn, share } of this.#draws.draw(this.#id(reading), nothing)) {
      const place = this.#placeOf(reading, drawn, true);
      table[place] = (table[place] ?? 0) + share;
    }
    this.#tables[reading] = table;
    return table;
  }

  /** Whether nothing else that can be read comes out together with it. */
  isAlone(reading: number): boolean {
    const before = this.#alone[reading];
    if (before !== undefined) return before;
    const alone = this.roots(reading).every((root) => (this.#hangingOn(root)?.length ?? 0) < 2);
    this.#alone[reading] = alone;
    return alone;
  }

  /** Whether another reading than the one so named hangs on it. */
  isShared(root: string): boolean {
    return (this.#hangingOn(root)?.length ?? 0) > 1;
  }

  /** What its band depends on and can come out in more ways than one, itself included. A computed reading is judged beside what was
   *  read and not beside what was drawn: it hangs on nothing. */
  roots(reading: number): readonly string[] {
    const before = this.#roots[reading];
    if (before !== undefined) return before;
    const isComputed = (this.#reading(reading)?.from ?? null) !== null;
    const all = isComputed ? [] : this.#draws.roots(this.#id(reading));
    const open = all.filter((root) => this.#isOpen(root));
    this.#roots[reading] = open;
    return open;
  }

  /** The ways in which a reading comes out beside what has come out before. */
  draw(reading: number, drawn: Drawn): readonly Way[] {
    if (drawn.size > 0) return this.#draw(reading, drawn);
    const before = this.#ways[reading];
    if (before !== undefined) return before;
    const made = this.#draw(reading, drawn);
    this.#ways[reading] = made;
    return made;
  }

  #draw(reading: number, drawn: Drawn): readonly Way[] {
    const id = this.#id(reading);
    const bound = this.isShared(id);
    return this.#draws.draw(id, drawn).map((draw) => ({
      ...draw,
      place: this.#placeOf(reading, draw.drawn, !bound),
    }));
  }

  /** The shares that the fault's author wrote, by band; null where there are none. */
  written(reading: number): Float64Array | null {
    const found = this.#reading(reading);
    const written = found && writtenShares(found, this.#ground.byId, this.fault);
    if (!written) return null;
    const { bands } = this.#shape(reading);
    return Float64Array.from(bands, (band) =>
      written.shares.reduce((sum, one) => (one.band === band ? sum + one.share : sum), 0),
    );
  }

  /** @param alone where other readings hang on this very band, it counts as that band even if it is hidden or nothing is said of it */
  #placeOf(reading: number, drawn: Drawn, alone: boolean): number {
    const id = this.#id(reading);
    const shape = this.#shape(reading);
    const found = this.#reading(reading);
    const band = shape.bands.indexOf(this.#draws.bandOf(id, drawn) ?? '');
    const isSpread = found?.hidden === null;
    if (this.#draws.isHidden(id, drawn)) return alone || !isSpread ? hiddenPlace(shape) : band;
    const isSilent = found?.normal === 'any' && found.from === null && this.written(reading) === null;
    return (isSilent && alone) || band < 0 ? silentPlace(shape) : band;
  }

  #isOpen(root: string): boolean {
    const at = this.#ground.places.get(root);
    if (at === undefined) return false;
    const table = this.table(at);
    return (
      table.reduce((ways, share) => ways + (share > 0 ? 1 : 0), 0) > 1 || isVague(this.#shape(at), table)
    );
  }

  #hangingOn(root: string): readonly number[] | undefined {
    if (this.#hanging === null) {
      const hanging = new Map<string, number[]>();
      for (let at = 0; at < this.#ground.readings.length; at++) {
        for (const each of this.roots(at)) {
          const known = hanging.get(each);
          if (known === undefined) hanging.set(each, [at]);
          else known.push(at);
        }
      }
      this.#hanging = hanging;
    }
    return this.#hanging.get(root);
  }

  #reading(at: number): Reading | undefined {
    return this.#ground.readings[at];
  }

  #id(at: number): string {
    return this.#ground.readings[at]?.id ?? '';
  }

  #shape(at: number): Shape {
    const shape = this.#ground.shapes[at];
    if (shape === undefined) throw new Error('expected every reading to have a shape');
    return shape;
  }
}

/** Silent, or hidden without a band of its own: it can come out in any. */
function isVague(shape: Shape, table: Float64Array): boolean {
  const hidden = table[hiddenPlace(shape)] ?? 0;
  const silent = table[silentPlace(shape)] ?? 0;
  return silent > 0 || (hidden > 0 && shape.whileHidden.filter((share) => share > 0).length > 1);
}
