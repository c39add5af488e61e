import type { Belief } from './belief.ts';
import { logsOf } from './logs-of.ts';
import { piecesOf } from './pieces.ts';
import type { Sighting } from './sighting.ts';
import { WeighedBelief, weighed } from './weighed-belief.ts';

/** What would be believed if one more reading came out in a band, on the board as it is now.
 *  @param belief of `believe` or of this
 *  @param band its place among the reading's bands */
export function after(belief: Belief, reading: string, band: number): Belief {
  const known = weighed(belief);
  const { weighing, suspected, sightings, logs } = known;
  const place = weighing.ground.places.get(reading) ?? -1;
  const name = weighing.ground.shapes[place]?.bands[band];
  if (name === undefined) throw new Error(`expected "${reading}" to have a band ${band}`);
  const sighting: Sighting = {
    reading,
    bands: [{ band: name, share: 1 }],
    board: 'failing',
    alsoPresent: [],
    entry: null,
  };
  const all = [...sightings, sighting];
  const next = isInput(belief, place)
    ? logsOf(weighing, suspected, piecesOf(weighing, all))
    : logs.map((log, at) => log + Math.log(known.prediction(at, place)[band] ?? 0));
  return new WeighedBelief(weighing, suspected, all, next);
}

/** What was computed from a reading has to be judged anew beside it. */
function isInput(belief: Belief, place: number): boolean {
  const { weighing, sightings } = weighed(belief);
  return sightings.some(({ reading }) =>
    weighing.inputs(weighing.ground.places.get(reading) ?? -1).includes(place),
  );
}
