import type { Observation } from '../model/observation.ts';
import { bandsOf, deriveObservation, observe } from '../scale/index.ts';
import { inputsOf } from '../suspects/inputs-of.ts';
import type { Sighting } from '../suspects/sighting.ts';
import type { Drill } from './drill.ts';
import { groundOf } from './ground-of.ts';
import { presentOf, seenIn } from './seen-in.ts';

/** Everything in a drill that tells of the board: its symptom, what was measured, proofs that failed, and what follows from them.
 *  @param upTo so many events of the drill; all of them if not given */
export function sightingsIn(drill: Drill, upTo = drill.events.length): readonly Sighting[] {
  const given = drill.tree.given.map(({ reading, band }) => ({
    ...common,
    reading,
    bands: [{ band, share: 1 }],
  }));
  const seen = seenIn(drill)
    .filter(({ at }) => at < upTo)
    .map(({ event, at, observation }) => ({
      ...common,
      reading: event.reading,
      bands: weightsOf(observation),
      board: event.board,
      entry: at,
    }));
  return [...given, ...seen, ...provenIn(drill, upTo), ...computedIn(drill, upTo)];
}

const common = { board: 'failing', alsoPresent: [], entry: null } as const;

/** The part of the instrument's doubt in each band; alike where it is open for another reason. */
function weightsOf({ bands, doubt }: Observation): Sighting['bands'] {
  return doubt !== null && doubt.shares.length > 1
    ? doubt.shares
    : bands.map((band) => ({ band, share: 1 / bands.length }));
}

/** What the board still showed after a remedy that was not the right one. */
function provenIn(drill: Drill, upTo: number): readonly Sighting[] {
  const { readings } = groundOf(drill);
  const present = presentOf(drill);
  return drill.events.slice(0, upTo).flatMap((event, at) => {
    if (event.kind !== 'named' || event.right) return [];
    return event.proof.flatMap(({ reading: id, typed }) => {
      const reading = readings.get(id);
      const seen = reading && observe(reading, present, typed, drill.equipment);
      return seen?.ok ? [{ ...common, reading: id, bands: weightsOf(seen.value), entry: at }] : [];
    });
  });
}

/** What is computed from what was measured last. */
function computedIn(drill: Drill, upTo: number): readonly Sighting[] {
  const derived = drill.tree.readings.filter(({ from }) => from !== null);
  if (derived.length === 0) return [];
  const present = presentOf(drill);
  const latest = new Map<string, Observation>();
  for (const { event, at, observation } of seenIn(drill)) {
    if (at < upTo) latest.set(event.reading, observation);
  }
  return derived.flatMap((reading): readonly Sighting[] => {
    const inputs = inputsOf(reading, drill.tree);
    if (inputs.length > 0 && !inputs.some((id) => latest.has(id))) return [];
    const found = deriveObservation(reading, present, (id) => latest.get(id) ?? null, drill.equipment.rule);
    if (found.bands.length === bandsOf(reading).length) return [];
    latest.set(reading.id, found);
    return [{ ...common, reading: reading.id, bands: weightsOf(found) }];
  });
}
