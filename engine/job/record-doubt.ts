import { verdictOf } from '../doubt/decision/index.ts';
import type { Observation } from '../model/observation.ts';
import type { Twin } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { RecordDoubt } from '../model/record.ts';
import { inRoundFigures, printQuantity } from '../quantity/index.ts';
import type { Session } from '../run/index.ts';

/** How far off the instrument may have been, and the verdict that takes it into account. */
export function recordDoubt(reading: Reading, observation: Observation | null): RecordDoubt | null {
  if (observation?.doubt == null) return null;
  const { instrument, plusMinus } = observation.doubt;
  const found = verdictOf(reading, observation);
  return {
    instrument,
    plusMinus: `± ${printQuantity(inRoundFigures(plusMinus))}`,
    verdict: found?.verdict ?? null,
    probability: found?.probability ?? null,
  };
}

/** `1.3 Vpp, read in this job`; from a board sheet with the day and the instrument. */
export function twinText({ board }: Session, reading: string, twin: Twin | null): string | null {
  if (twin === null) return null;
  const reference = board?.references.find((each) => each.reading === reading);
  const sheet = reference === undefined ? '' : ` (${reference.date}, ${reference.instrument})`;
  const from = {
    'this job': 'read in this job',
    'board sheet': `by the board sheet${sheet}`,
    usual: 'as usual',
  };
  return `${printQuantity(twin.value)}, ${from[twin.from]}`;
}
