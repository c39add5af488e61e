import type { HeadSyntax, SectionSyntax } from './section-syntax.ts';

/** Something whose offsets count from `from` of the file. */
export interface Placed<T> {
  readonly from: number;
  readonly syntax: T;
}

/** The body of a file as it was read, no name looked up. */
export interface BodySyntax {
  readonly head: Placed<HeadSyntax>;
  readonly sections: readonly Placed<SectionSyntax>[];
}
