import type { Measure } from '../model/reading.ts';

/** The built-in last band of every codes reading. */
export const otherBand = 'other';

/** @param code upper case, with all its digits, or a word of the table such as `none` */
export function bandOfCode({ ranges }: Extract<Measure, { kind: 'codes' }>, code: string): string {
  // Hexadecimal digits of equal number sort as text.
  const range = ranges.find(({ from, to }) => from.length === code.length && from <= code && code <= to);
  return range?.band ?? otherBand;
}
