import type { Fault, Share } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import { bandsOf } from '../scale/index.ts';
import { unmetShare } from './unmet-share.ts';

/** Why a fault shows these bands in a reading. */
export type ShownHow =
  /** The author said so. */
  | 'written'
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
}

/** What one fault shows in every reading of its tree, by reading. The first that applies:
 *
 *      written   shows: { v5: low }
 *      hidden    needs something that the fault breaks, directly or through the needs of the needed
 *      unknown   the fault has `rest: unknown`
 *      free      the reading has `normal: any`
 *      normal    everything else
 */
export function shownBands(tree: ReadingsAndFaults, fault: Fault): ReadonlyMap<string, Shown> {
  const readings = new Map(tree.readings.map((reading) => [reading.id, reading]));
  return new Map(tree.readings.map((reading) => [reading.id, shownIn(reading, readings, fault)]));
}

function shownIn(reading: Reading, readings: ReadonlyMap<string, Reading>, fault: Fault): Shown {
  const written = fault.shows.find((shows) => shows.reading === reading.id);
  if (written !== undefined) return { how: 'written', shares: written.shares };
  const open = shownWhileOpen(reading, fault);
  const hidden = unmetShare(reading, readings, fault);
  if (hidden === 0) return open;
  if (reading.hidden === null) return { how: 'unknown', shares: even(bandsOf(reading)) };
  return { how: 'hidden', shares: mix(reading.hidden, hidden, open.shares) };
}

/** What a reading shows while nothing is missing that it needs. */
function shownWhileOpen(reading: Reading, fault: Fault): Shown {
  if (fault.rest === 'unknown') return { how: 'unknown', shares: even(bandsOf(reading)) };
  if (reading.normal === 'any') return { how: 'free', shares: even(bandsOf(reading)) };
  return { how: 'normal', shares: even(reading.normal) };
}

const even = (bands: readonly string[]): readonly Share[] =>
  bands.map((band) => ({ band, share: 1 / bands.length }));

/** `share` of `band`, and the rest as `others` divide it; `band` stands first. */
function mix(band: string, share: number, others: readonly Share[]): readonly Share[] {
  if (share === 1) return [{ band, share }];
  const rest = others.map((other) => ({ band: other.band, share: other.share * (1 - share) }));
  const same = rest.find((other) => other.band === band)?.share ?? 0;
  return [{ band, share: share + same }, ...rest.filter((other) => other.band !== band)];
}
