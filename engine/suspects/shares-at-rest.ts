import type { Fault, Share } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import { bandsOf, healthyBandsOf } from '../scale/index.ts';

/** Every band in an equal share. */
export const even = (bands: readonly string[]): readonly Share[] =>
  bands.map((band) => ({ band, share: 1 / bands.length }));

/** What a reading shows that the fault does not mention and that nothing is missing for. */
export const sharesAtRest = (reading: Reading, { rest }: Fault): readonly Share[] =>
  even(rest === 'unknown' ? bandsOf(reading) : healthyBandsOf(reading));
