import type { Crowd } from '../diagnostics/source-facts.ts';

/** What a file may hold. Texts beyond these take a Markdown parser seconds to minutes (nested lists,
 *  growing runs of backticks and pairs of emphasis marks grow with the square of their number). */
export const limits = {
  fileCharacters: 1024 * 1024,
  sectionCharacters: 64 * 1024,
  sections: 5000,
  /** Keys of the front-matter, two levels deep. */
  entries: 10_000,
  /** Lists and quotes within each other on one line. */
  depth: 20,
  /** Backticks in a row. */
  backticks: 8,
  /** Of each thing in `crowds`, in one section. */
  crowd: 1000,
  /** How far to look, in all, for the ends of blocks that have none. */
  searchCharacters: 128 * 1024,
} as const;

/** What is counted in a section, and how. */
export const crowds: Readonly<Record<Exclude<Crowd, 'list and quote marks'>, RegExp>> = {
  lines: /\r\n|\r|\n/g,
  'emphasis marks': /\*+|_+/g,
  brackets: /\[/g,
};
