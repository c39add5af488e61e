import { bandsOf } from '../scale/index.ts';
import type { Drill } from './drill.ts';
import { groundOf } from './ground-of.ts';
import { withEvent } from './with-event.ts';

/** The trainee says before measuring what it will show. A band that the reading does not have says nothing. */
export function predict(drill: Drill, reading: string, band: string): Drill {
  const found = groundOf(drill).readings.get(reading);
  return drill.state !== 'running' || found === undefined || !bandsOf(found).includes(band)
    ? drill
    : withEvent(drill, { kind: 'predicted', reading, band });
}

/** The same reading on a known-good board, which takes as long as on this one. */
export function askTwin(drill: Drill, reading: string): Drill {
  const { board, readings } = groundOf(drill);
  const found = readings.get(reading);
  if (drill.state !== 'running' || found === undefined || found.from !== null || found.call) return drill;
  return withEvent(
    drill,
    { kind: 'twin', reading, typed: board.twin(reading) },
    { minutes: found.minutes, wait: found.wait },
  );
}

/** The trainee gives up, and is told what it was. */
export const giveUp = (drill: Drill): Drill =>
  drill.state === 'running' ? { ...withEvent(drill, { kind: 'gave-up' }), state: 'gave up' } : drill;
