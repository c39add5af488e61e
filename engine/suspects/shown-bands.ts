import type { Fault, Share } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import { bandsOf } from '../scale/index.ts';
import { type Draws, drawsOf } from './draws.ts';
import { possibleUsually } from './possible-usually.ts';
import { even, sharesAtRest } from './shares-at-rest.ts';
import { writtenShares } from './written-shares.ts';

/** Why a fault shows these bands in a reading. */
export type ShownHow =
  /** The author said so, of this reading or of the one it is like. */
  | 'written'
  /** It is computed: what the readings it is computed from allow. */
  | 'derived'
  /** The fault takes away something the reading needs, always or in a share of the cases. */
  | 'hidden'
  /** `rest: unknown`: any band, none likelier than another. */
  | 'unknown'
  /** Nothing is judged here (`normal: any`) and the fault does not mention it: no evidence. */
  | 'free'
  | 'normal';

/** What a fault shows in one reading; the shares add up to 1. */
export interface Shown {
  readonly how: ShownHow;
  readonly shares: readonly Share[];
}

export interface ReadingsAndFaults {
  readonly readings: readonly Reading[];
  readonly faults: readonly Fault[];
  /** What derived readings are worked out with, at their usual values. */
  readonly settings?: readonly Setting[];
}

/** What one fault shows in the readings of its tree, by reading. The first that applies:
 *
 *      written   shows: { v5: low }, here or for the reading that this one is like
 *      derived   computed from other readings, whatever they show
 *      hidden    needs something that the fault breaks, directly or through the needs of the needed
 *      unknown   the fault has `rest: unknown`
 *      free      the reading has `normal: any`, as the ends of a call do
 *      normal    everything else
 *
 *  @param of the readings that are wanted, where not all are */
export function shownBands(
  tree: ReadingsAndFaults,
  fault: Fault,
  of: readonly Reading[] = tree.readings,
): ReadonlyMap<string, Shown> {
  const readings = new Map(tree.readings.map((reading) => [reading.id, reading]));
  const draws = drawsOf(tree, fault, possibleUsually(tree, fault));
  return new Map(of.map((reading) => [reading.id, shownIn(reading, readings, fault, draws)]));
}

function shownIn(
  reading: Reading,
  readings: ReadonlyMap<string, Reading>,
  fault: Fault,
  draws: Draws,
): Shown {
  const written = writtenShares(reading, readings, fault);
  if (written !== null && reading.from === null) return { how: 'written', shares: written.shares };
  if (reading.from !== null) {
    return { how: written === null ? 'derived' : 'written', shares: sharesDrawn(reading.id, draws) };
  }
  const open = shownWhileOpen(reading, fault);
  const hidden = draws.hiddenShare(reading.id);
  if (hidden === 0) return open;
  if (reading.hidden === null) return { how: 'unknown', shares: even(bandsOf(reading)) };
  return { how: 'hidden', shares: mix(reading.hidden, hidden, open.shares) };
}

/** What a reading shows while nothing is missing that it needs. */
function shownWhileOpen(reading: Reading, fault: Fault): Shown {
  const how = fault.rest === 'unknown' ? 'unknown' : reading.normal === 'any' ? 'free' : 'normal';
  return { how, shares: sharesAtRest(reading, fault) };
}

function sharesDrawn(id: string, draws: Draws): readonly Share[] {
  const shares = new Map<string, number>();
  for (const { drawn, share } of draws.draw(id, new Map())) {
    const band = draws.bandOf(id, drawn);
    if (band !== undefined) shares.set(band, (shares.get(band) ?? 0) + share);
  }
  return [...shares].map(([band, share]) => ({ band, share }));
}

/** `share` of `band`, and the rest as `others` divide it; `band` stands first. */
function mix(band: string, share: number, others: readonly Share[]): readonly Share[] {
  if (share === 1) return [{ band, share }];
  const rest = others.map((other) => ({ band: other.band, share: other.share * (1 - share) }));
  const same = rest.find((other) => other.band === band)?.share ?? 0;
  return [{ band, share: share + same }, ...rest.filter((other) => other.band !== band)];
}
