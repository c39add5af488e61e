import type { Reading } from '../model/reading.ts';
import { placesOf, type Shape, silentPlace } from './shape.ts';
import type { Sighting } from './sighting.ts';
import type { Weighing } from './weighing.ts';
import { sumOf, weightsSeen } from './weights-seen.ts';

/** A computed reading beside what its inputs were read as. */
export interface Restricted {
  readonly shape: Shape;
  /** 1 for each band that the inputs allow, 0 for the others. */
  readonly allowed: Float64Array;
  readonly table: (answerer: number) => Float64Array;
}

/**
 * What is computed follows from what was read, slips and all, and only within that a fault can say more:
 *
 *      P(band | inputs as read, fault) = the fault's share of it among the bands that the inputs allow;
 *                                        all of those alike where the fault says nothing of them
 *
 * so that nothing is counted twice. Null where no input was read: then the reading counts like one that is taken.
 */
export function restricted(
  weighing: Weighing,
  reading: number,
  when: Pick<Sighting, 'alsoPresent'>,
  sightings: readonly Sighting[],
): Restricted | null {
  const shape = weighing.ground.shapes[reading];
  const found = weighing.tree.readings[reading];
  if (found === undefined || found.from === null || shape === undefined) return null;
  const inputs = inputsRead(weighing, reading, when, sightings);
  if (inputs === null) return null;
  const names = weighing.allowed(found, inputs);
  const allowed = Float64Array.from(shape.bands, (band) => (names.includes(band) ? 1 : 0));
  const count = sumOf(allowed);
  if (count === 0) return null;
  return {
    shape: { ...shape, whileSilent: allowed.map((one) => one / count) },
    allowed,
    table: (answerer) => tableWithin(shape, allowed, weighing.answers(answerer).written(reading)),
  };
}

/** How likely what was seen is where a band is the right one; a slip is spread over the allowed bands. Null where it is no evidence:
 *  nothing else was possible, or what was seen should not have been. */
export function fitsWithin(
  { shape, allowed }: Restricted,
  sighting: Pick<Sighting, 'bands'>,
  slip: number,
): Float64Array | null {
  const count = sumOf(allowed);
  const weights = weightsSeen(shape.bands, sighting).map((weight, at) => weight * (allowed[at] ?? 0));
  const sum = sumOf(weights);
  if (count === 1 || sum === 0) return null;
  return weights.map((weight, at) => (allowed[at] ?? 0) * ((1 - slip) * weight + (slip * sum) / count));
}

/** The bands of the inputs as they were last read with the same on the board; an input that was not read can be in any. Null
 *  where none was. */
function inputsRead(
  weighing: Weighing,
  reading: number,
  { alsoPresent }: Pick<Sighting, 'alsoPresent'>,
  sightings: readonly Sighting[],
): ReadonlyMap<string, readonly string[]> | null {
  const then = alsoPresent.join('\n');
  let some = false;
  const inputs = weighing.inputs(reading).map((place) => {
    const input = weighing.tree.readings[place] as Reading;
    const seen = sightings.findLast((one) => one.reading === input.id && one.alsoPresent.join('\n') === then);
    const bands = seen?.bands.filter(({ share }) => share > 0).map(({ band }) => band) ?? [];
    if (bands.length > 0) some = true;
    return [input.id, bands.length > 0 ? bands : (weighing.ground.shapes[place]?.bands ?? [])] as const;
  });
  return some ? new Map(inputs) : null;
}

function tableWithin(shape: Shape, allowed: Float64Array, written: Float64Array | null): Float64Array {
  const table = new Float64Array(placesOf(shape));
  const sum =
    written === null ? 0 : written.reduce((total, share, at) => total + share * (allowed[at] ?? 0), 0);
  if (written === null || sum === 0) table[silentPlace(shape)] = 1;
  else
    written.forEach((share, at) => {
      table[at] = (share * (allowed[at] ?? 0)) / sum;
    });
  return table;
}
