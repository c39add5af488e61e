import { fitsWithin, restricted } from './restricted.ts';
import type { Shape } from './shape.ts';
import type { Sighting } from './sighting.ts';
import type { Weighing } from './weighing.ts';
import { sumOf, weightsSeen } from './weights-seen.ts';

/** Sightings of one reading while the same was on the board. */
export interface Look {
  /** Answerers that were on the board then besides the one that is weighed. */
  readonly also: readonly number[];
  readonly running: boolean;
  /** How likely what was seen is where the board shows a band, slips included; by band. */
  readonly fits: Float64Array;
}

/** All that was seen of one reading. */
export interface Piece {
  readonly reading: number;
  readonly shape: Shape;
  readonly looks: readonly Look[];
  /** Of a computed reading: what each answerer says of it beside what its inputs were read as. Null: as the board is drawn. */
  readonly table: ((answerer: number) => Float64Array) | null;
}

/** Cuts what was seen into pieces of evidence: one for each reading, and one for each sighting of a computed one. */
export function piecesOf(weighing: Weighing, sightings: readonly Sighting[]): readonly Piece[] {
  const { ground, odds } = weighing;
  const looks = new Map<number, Map<string, Look>>();
  const computed: Piece[] = [];
  for (const sighting of sightings) {
    const reading = ground.places.get(sighting.reading);
    const shape = reading === undefined ? undefined : ground.shapes[reading];
    if (reading === undefined || shape === undefined) continue;
    const within = restricted(weighing, reading, sighting, sightings);
    if (within === null) {
      const ofReading = looks.get(reading) ?? new Map<string, Look>();
      looks.set(reading, ofReading);
      addLook(ofReading, lookOf(weighing, sighting, fitsOf(shape, sighting, odds.slip)));
      continue;
    }
    const fits = fitsWithin(within, sighting, odds.slip);
    if (fits === null) continue;
    computed.push({
      reading,
      shape: within.shape,
      table: within.table,
      looks: [lookOf(weighing, sighting, fits)],
    });
  }
  const taken = [...looks].flatMap(([reading, ofReading]) => {
    const shape = ground.shapes[reading];
    return shape === undefined ? [] : [{ reading, shape, looks: [...ofReading.values()], table: null }];
  });
  return [...taken, ...computed];
}

/** Σ w(b) · [(1 − slip) · 1{drawn = b} + slip / K] for each band that can be drawn. */
function fitsOf({ bands }: Shape, sighting: Sighting, slip: number): Float64Array {
  const weights = weightsSeen(bands, sighting);
  const sum = sumOf(weights);
  return weights.map((weight) => (1 - slip) * weight + (slip * sum) / bands.length);
}

function lookOf({ answererOf }: Weighing, { alsoPresent, board }: Sighting, fits: Float64Array): Look {
  const also = alsoPresent.flatMap((fault) => answererOf.get(fault) ?? []);
  return { also, running: board === 'running', fits };
}

function addLook(looks: Map<string, Look>, look: Look): void {
  const key = `${look.running} ${look.also.join()}`;
  const before = looks.get(key);
  looks.set(key, before === undefined ? look : { ...look, fits: product(before.fits, look.fits) });
}

const product = (a: Float64Array, b: Float64Array): Float64Array =>
  a.map((value, at) => value * (b[at] ?? 0));
