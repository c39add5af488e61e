import type { Span } from '../model/span.ts';

/** A place of a section in offsets of the file. */
export const placeIn = (from: number, { from: start, to: end }: Span): Span => ({
  from: from + start,
  to: from + end,
});
