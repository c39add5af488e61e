import type { Observation } from '../../../engine/model/observation.ts';
import type { Reading } from '../../../engine/model/reading.ts';

/** What the author says that an option, a code or a beep pattern means; null where nothing is said. */
export function meaningOf(
  { measure }: Reading,
  { understood }: Pick<Observation, 'understood'>,
): string | null {
  if (measure.kind === 'options' && understood.kind === 'option')
    return measure.options.find(({ name }) => name === understood.option)?.means ?? null;
  if (measure.kind === 'codes' && understood.kind === 'code') {
    const { code } = understood;
    return measure.ranges.find(({ from, to }) => from <= code && code <= to)?.means ?? null;
  }
  if (measure.kind === 'beeps' && understood.kind === 'beeps')
    return measure.patterns.find(({ pattern }) => pattern === understood.pattern)?.means ?? null;
  return null;
}
