import type { Sighting } from './sighting.ts';

/** How well each band of a reading goes with what was seen, in the reading's order. */
export const weightsSeen = (
  bands: readonly string[],
  { bands: seen }: Pick<Sighting, 'bands'>,
): Float64Array =>
  Float64Array.from(bands, (band) =>
    seen.reduce((sum, one) => (one.band === band ? sum + one.share : sum), 0),
  );

export const sumOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);
