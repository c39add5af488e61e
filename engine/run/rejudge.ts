import type { Observation } from '../model/observation.ts';
import { judge, resolveScale, usedLimits } from '../scale/index.ts';
import type { Session } from './session.ts';

/** The same look at a reading, judged by the settings as the session has them now. */
export function rejudge(session: Session, observation: Observation): Observation {
  const reading = session.loaded.readings.get(observation.reading);
  if (reading?.measure.kind !== 'quantity') return observation;
  const resolved = resolveScale(reading, session);
  return {
    ...observation,
    bands: judge(reading, resolved, observation.understood),
    used: usedLimits(resolved),
  };
}
