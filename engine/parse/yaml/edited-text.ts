/** A change of a text: what stands from `from` to `to` becomes `insert`. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly insert: string;
}

/** A text with repairs in it, and the way back to the places of the original. */
export class EditedText {
  readonly text: string;
  /** In the order in which they were made, each in the coordinates of its moment. */
  private readonly edits: readonly Edit[];

  constructor(text: string, edits: readonly Edit[] = []) {
    this.text = text;
    this.edits = edits;
  }

  /** @param edits in ascending order, not overlapping */
  with(edits: readonly Edit[]): EditedText {
    let text = this.text;
    const made: Edit[] = [];
    for (const edit of [...edits].reverse()) {
      text = text.slice(0, edit.from) + edit.insert + text.slice(edit.to);
      made.push(edit);
    }
    return new EditedText(text, [...this.edits, ...made]);
  }

  /** The offset in the original that became `offset`; inside an inserted text, where it was inserted. */
  original(offset: number): number {
    let at = offset;
    for (const { from, to, insert } of this.edits.toReversed()) {
      const grown = insert.length - (to - from);
      if (at >= from + insert.length) at -= grown;
      else if (at > from) at = Math.min(at, to);
    }
    return at;
  }
}
