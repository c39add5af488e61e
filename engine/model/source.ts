/** A part of a file's text and where it begins in the whole. */
export interface Slice {
  readonly text: string;
  readonly from: number;
}

/** A file cut at its front-matter and at every line that begins with `## `. */
export interface Source {
  readonly text: string;
  /** The YAML between the two `---` lines, without them. */
  readonly front: Slice | null;
  /** What stands above the first section. */
  readonly head: Slice;
  readonly sections: readonly Slice[];
}
