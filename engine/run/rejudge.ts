import type { Observation, Understood } from '../model/observation.ts';
import type { Measure } from '../model/reading.ts';
import { baseUnit } from '../quantity/index.ts';
import { bandsOf, judgeAgain } from '../scale/index.ts';
import type { Session } from './session.ts';

/** The same look at a reading, judged by the settings and the rule as the session has them now, its doubt as it was taken.
 *  Null where the present tree has no such reading, or takes it in another way. */
export function rejudge(session: Session, observation: Observation): Observation | null {
  const reading = session.loaded.readings.get(observation.reading);
  if (reading === undefined || !suits(observation.understood, reading.measure)) return null;
  const again = judgeAgain(reading, session, observation, session.equipment.rule);
  const bands = bandsOf(reading);
  return again.bands.length > 0 && again.bands.every((band) => bands.includes(band)) ? again : null;
}

const suitings: {
  readonly [Kind in Understood['kind']]: (
    understood: Extract<Understood, { readonly kind: Kind }>,
    measure: Measure,
  ) => boolean;
} = {
  quantity: ({ quantity }, measure) => isIn(quantity.unit, measure),
  interval: ({ unit }, measure) => isIn(unit, measure),
  overload: (_, measure) => measure.kind === 'quantity',
  option: ({ option }, measure) =>
    measure.kind === 'options' && measure.options.some(({ name }) => name === option),
  code: ({ code }, measure) => measure.kind === 'codes' && measure.digits === code.length,
  beeps: (_, measure) => measure.kind === 'beeps',
  tries: (_, measure) => measure.kind === 'tries',
  each: ({ members }, measure) =>
    measure.kind === 'each' &&
    measure.members.length === members.length &&
    members.every(
      ({ name, understood }, at) => measure.members[at] === name && suits(understood, measure.of),
    ),
};

const suits = (understood: Understood, measure: Measure): boolean =>
  suitings[understood.kind](understood as never, measure);

const isIn = (unit: string, measure: Measure): boolean =>
  measure.kind === 'quantity' && baseUnit(measure.unit) === baseUnit(unit);
