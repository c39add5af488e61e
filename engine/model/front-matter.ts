import type { Span } from './span.ts';

export type Path = readonly (string | number)[];

/** YAML as data and the way back to its place in the file. */
export interface FrontMatter {
  /** Null-prototype objects, arrays and strings: every scalar is text until the schema asks for a number. */
  readonly data: unknown;
  /** Where the value (or the key) at `path` stands; the nearest ancestor's place if there is none. */
  spanOf(path: Path, part?: 'key' | 'value'): Span;
}
