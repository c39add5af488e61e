import type { Reading } from '../model/reading.ts';
import { bandsOf } from '../scale/index.ts';

/** What a reading can do, as places in a table:
 *
 *      0 … K−1   the bands        K   hidden        K+1   silent: whoever answers says nothing of it
 */
export interface Shape {
  readonly bands: readonly string[];
  readonly normal: readonly boolean[];
  /** How the bands share what is hidden, and what nobody says anything of. */
  readonly whileHidden: Float64Array;
  readonly whileSilent: Float64Array;
}

export const placesOf = ({ bands }: Shape): number => bands.length + 2;
export const hiddenPlace = ({ bands }: Shape): number => bands.length;
export const silentPlace = ({ bands }: Shape): number => bands.length + 1;

export function shapeOf(reading: Reading): Shape {
  const bands = bandsOf(reading);
  const even = new Float64Array(bands.length).fill(1 / bands.length);
  const { hidden, normal } = reading;
  return {
    bands,
    normal: bands.map((band) => normal !== 'any' && normal.includes(band)),
    whileHidden: hidden === null ? even : Float64Array.from(bands, (band) => (band === hidden ? 1 : 0)),
    whileSilent: even,
  };
}

/** The bands that are read where several faults are on the board: hidden wins, else an even chance among those out of normal,
 *  else among those that say something.
 *  @param places what each of them does
 *  @returns the share of each band; they add up to 1 */
export function bandsShown(shape: Shape, places: readonly number[]): Float64Array {
  const size = shape.bands.length;
  const only = places[0] ?? silentPlace(shape);
  if (places.includes(hiddenPlace(shape))) return shape.whileHidden;
  const speaking = places.length === 1 && only < size ? places : places.filter((place) => place < size);
  if (speaking.length === 0) return shape.whileSilent;
  const odd = speaking.filter((place) => shape.normal[place] !== true);
  const heard = odd.length > 0 ? odd : speaking;
  const shown = new Float64Array(size);
  for (const place of heard) shown[place] = (shown[place] ?? 0) + 1 / heard.length;
  return shown;
}
