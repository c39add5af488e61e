import type { Fault, Share } from '../model/fault.ts';
import type { Need, Reading } from '../model/reading.ts';
import { bandsOf } from '../scale/index.ts';
import { demandsOf } from './demands-of.ts';
import { inputsOf } from './inputs-of.ts';
import type { PossibleBands } from './possible-bands.ts';
import { even, sharesAtRest } from './shares-at-rest.ts';
import { type Written, writtenShares } from './written-shares.ts';

/** The bands that readings have come out in, by origin: a reading that shows what it is `like` shows goes with it. */
export type Drawn = ReadonlyMap<string, string>;

/** One way in which things can come out under a fault, and in which share of the cases. */
export interface Draw {
  readonly drawn: Drawn;
  readonly share: number;
}

/** How a board with one fault answers. Different readings come out independently of each other; what one is hidden behind or
 *  computed from comes out first. */
export interface Draws {
  /** Every way in which `reading` can come out beside what has come out before; the shares add up to 1. */
  draw(reading: string, drawn: Drawn): readonly Draw[];
  /** The band of a reading that was drawn. */
  bandOf(reading: string, drawn: Drawn): string | undefined;
  /** In which share of the cases something is missing that the reading needs. */
  hiddenShare(reading: string): number;
  /** Whether something is missing that a reading needs, as things have come out. */
  isHidden(reading: string, drawn: Drawn): boolean;
  /** Everything that a reading's band depends on, itself included, as `drawn` names it. */
  roots(reading: string): readonly string[];
}

/** Merges bands that whoever draws does not tell apart. */
export type Alike = (reading: string, shares: readonly Share[]) => readonly Share[];

/** More combinations of input bands than this are not drawn one by one: the derived reading is then
 *  drawn from all that its inputs allow together. */
const mostCombinations = 512;

const nothing: Drawn = new Map();

export function drawsOf(
  tree: { readonly readings: readonly Reading[] },
  fault: Fault,
  possible: PossibleBands,
  alike: Alike = (_reading, shares) => shares,
): Draws {
  return new Drawing(tree, fault, possible, alike);
}

class Drawing implements Draws {
  readonly #tree: { readonly readings: readonly Reading[] };
  readonly #readings: ReadonlyMap<string, Reading>;
  readonly #fault: Fault;
  readonly #possible: PossibleBands;
  readonly #alike: Alike;
  readonly #written = new Map<string, Written | null>();
  readonly #demands = new Map<string, readonly Need[] | null>();
  readonly #inputs = new Map<string, readonly string[]>();
  /** Readings being drawn: a circle, which is reported elsewhere, must only come to an end. */
  readonly #under = new Set<string>();

  constructor(
    tree: { readonly readings: readonly Reading[] },
    fault: Fault,
    possible: PossibleBands,
    alike: Alike,
  ) {
    this.#tree = tree;
    this.#readings = new Map(tree.readings.map((reading) => [reading.id, reading]));
    this.#fault = fault;
    this.#possible = possible;
    this.#alike = alike;
  }

  draw(id: string, drawn: Drawn): readonly Draw[] {
    const key = this.#keyOf(id);
    const reading = this.#readings.get(key);
    if (drawn.has(key) || reading === undefined || this.#under.has(key)) return [{ drawn, share: 1 }];
    this.#under.add(key);
    const draws = this.#fresh(reading, drawn);
    this.#under.delete(key);
    return draws;
  }

  bandOf(id: string, drawn: Drawn): string | undefined {
    return drawn.get(this.#keyOf(id));
  }

  hiddenShare(id: string): number {
    const reading = this.#readings.get(id);
    if (reading === undefined) return 0;
    const hidden = this.#opened(reading, nothing).reduce(
      (sum, { open, share }) => sum + (open ? 0 : share),
      0,
    );
    return hidden < 1e-9 ? 0 : hidden;
  }

  isHidden(id: string, drawn: Drawn): boolean {
    const reading = this.#readings.get(id);
    if (reading === undefined || reading.from !== null || this.#writtenFor(reading) !== null) return false;
    const demands = this.#demandsFor(reading);
    return demands === null || demands.some((need) => isMissing(need, this.bandOf(need.reading, drawn)));
  }

  roots(id: string): readonly string[] {
    const found = new Set([this.#keyOf(id)]);
    for (const key of found) {
      const reading = this.#readings.get(key);
      if (reading === undefined) continue;
      const before = this.#writtenFor(reading) === null ? (this.#demandsFor(reading) ?? []) : [];
      for (const needed of before) found.add(this.#keyOf(needed.reading));
      for (const input of this.#inputsFor(reading)) found.add(this.#keyOf(input));
    }
    return [...found];
  }

  #fresh(reading: Reading, drawn: Drawn): readonly Draw[] {
    if (reading.from !== null) return this.#computed(reading, drawn);
    const written = this.#writtenFor(reading);
    if (written !== null) return this.#spread(reading, written.shares, { drawn, share: 1 });
    return this.#opened(reading, drawn).flatMap(({ open, ...draw }) =>
      this.#spread(reading, open ? sharesAtRest(reading, this.#fault) : sharesWhileHidden(reading), draw),
    );
  }

  /** What is written counts as far as the inputs allow it. */
  #computed(reading: Reading, drawn: Drawn): readonly Draw[] {
    const written = this.#writtenFor(reading)?.shares ?? null;
    const inputs = this.#inputsFor(reading);
    const combined = this.#after(inputs, { drawn, share: 1 });
    if (combined === null) {
      const supports = new Map(inputs.map((input) => [input, this.#supportOf(input)]));
      const shares = sharesAmong(this.#possible(reading, supports), written);
      return this.#spread(reading, shares, { drawn, share: 1 });
    }
    return combined.flatMap((draw) => {
      const bands = new Map(inputs.map((input) => [input, [this.bandOf(input, draw.drawn) ?? '']]));
      return this.#spread(reading, sharesAmong(this.#possible(reading, bands), written), draw);
    });
  }

  /** Draws one reading after the other; null where that would be too many ways. */
  #after(ids: readonly string[], start: Draw): readonly Draw[] | null {
    let draws: readonly Draw[] = [start];
    for (const id of ids) {
      draws = draws.flatMap(({ drawn, share }) =>
        this.draw(id, drawn).map((next) => ({ drawn: next.drawn, share: share * next.share })),
      );
      if (draws.length > mostCombinations) return null;
    }
    return draws;
  }

  #supportOf(id: string): readonly string[] {
    return [...new Set(this.draw(id, nothing).flatMap(({ drawn }) => this.bandOf(id, drawn) ?? []))];
  }

  /** Draws what the reading could be hidden behind. */
  #opened(reading: Reading, drawn: Drawn): readonly (Draw & { readonly open: boolean })[] {
    const demands = this.#demandsFor(reading);
    if (demands === null) return [{ drawn, share: 1, open: false }];
    let draws: readonly (Draw & { readonly open: boolean })[] = [{ drawn, share: 1, open: true }];
    for (const { reading: needed, bands } of demands) {
      draws = draws.flatMap((draw) => {
        if (!draw.open) return [draw];
        return this.draw(needed, draw.drawn).map((next) => {
          const band = this.bandOf(needed, next.drawn);
          return {
            ...next,
            share: draw.share * next.share,
            open: band === undefined || bands.includes(band),
          };
        });
      });
    }
    return draws;
  }

  #spread(reading: Reading, shares: readonly Share[], { drawn, share }: Draw): readonly Draw[] {
    return this.#alike(reading.id, shares).map((one) => ({
      drawn: new Map(drawn).set(reading.id, one.band),
      share: share * one.share,
    }));
  }

  #keyOf(id: string): string {
    const reading = this.#readings.get(id);
    return (reading && this.#writtenFor(reading)?.origin) ?? id;
  }

  #writtenFor(reading: Reading): Written | null {
    return kept(this.#written, reading.id, () => writtenShares(reading, this.#readings, this.#fault));
  }

  #demandsFor(reading: Reading): readonly Need[] | null {
    return demandsOf(reading, this.#readings, this.#fault, this.#demands);
  }

  #inputsFor(reading: Reading): readonly string[] {
    return kept(this.#inputs, reading.id, () => inputsOf(reading, this.#tree));
  }
}

const isMissing = ({ bands }: Need, band: string | undefined): boolean =>
  band !== undefined && !bands.includes(band);

function kept<Value>(cache: Map<string, Value>, id: string, make: () => Value): Value {
  const before = cache.get(id);
  if (before !== undefined) return before;
  const made = make();
  cache.set(id, made);
  return made;
}

const sharesWhileHidden = (reading: Reading): readonly Share[] =>
  even(reading.hidden === null ? bandsOf(reading) : [reading.hidden]);

/** What is written, as far as it is possible. An author who wrote only what cannot be is believed: the limits may
 *  be other ones at the bench. */
function sharesAmong(possible: readonly string[], written: readonly Share[] | null): readonly Share[] {
  if (written === null) return even(possible);
  const allowed = written.filter(({ band }) => possible.includes(band));
  const sum = allowed.reduce((total, { share }) => total + share, 0);
  return sum > 0 ? allowed.map(({ band, share }) => ({ band, share: share / sum })) : written;
}
