import type { Span } from '../model/span.ts';
import type { HeadSyntax, SectionSyntax } from '../read/section-syntax.ts';

/** Something whose offsets count from `from` of the file. */
export interface Placed<T> {
  readonly from: number;
  readonly syntax: T;
}

/** The body of a file as it was read. */
export interface BodySyntax {
  readonly head: Placed<HeadSyntax>;
  readonly sections: readonly Placed<SectionSyntax>[];
}

/** A place of a section in offsets of the file. */
export const placeIn = (from: number, { from: start, to: end }: Span): Span => ({
  from: from + start,
  to: from + end,
});
