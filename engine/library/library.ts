/** The files beside the one that is compiled. Paths count from one root and are written with `/`. */
export interface Library {
  /** The text of a file, or null where there is none. */
  text(path: string): string | null;
  /** A picture as a `data:` address, or null where there is none. */
  picture(path: string): string | null;
  /** The Markdown files there are, where that is known: names that could have been meant are looked for among them. */
  paths?(): readonly string[];
}

/** A file that stands alone. */
export const emptyLibrary: Library = { text: () => null, picture: () => null };
