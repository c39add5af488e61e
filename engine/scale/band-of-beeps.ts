import type { Measure } from '../model/reading.ts';
import { otherBand } from './band-of-code.ts';

/** @param pattern as it is stored: `LSS`, `1-3-3`, `none` */
export const bandOfBeeps = ({ patterns }: Extract<Measure, { kind: 'beeps' }>, pattern: string): string =>
  patterns.find((row) => row.pattern === pattern)?.band ?? otherBand;
