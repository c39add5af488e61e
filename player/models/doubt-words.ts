import type { Observation } from '../../engine/model/observation.ts';
import { printQuantity } from '../../engine/quantity/index.ts';
import { twoDigits } from './two-digits.ts';

/** `± 44 mV with the bench meter`; null where nothing is known of the instrument. */
export const doubtWords = ({ doubt }: Pick<Observation, 'doubt'>): string | null =>
  doubt === null ? null : `± ${printQuantity(twoDigits(doubt.plusMinus))} with the ${doubt.instrument}`;
