import type { Reading } from '../model/reading.ts';

/** Which bands of a derived reading are possible when its inputs are only known by band. Never leaves a possible one out.
 *  @param inputs the bands of each reading it is computed from */
export type PossibleBands = (
  derived: Reading,
  inputs: ReadonlyMap<string, readonly string[]>,
) => readonly string[];
