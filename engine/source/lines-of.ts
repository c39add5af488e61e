/** A line of a text, without its line ending. */
export interface Line {
  readonly from: number;
  /** Where the line ending begins. */
  readonly to: number;
  /** Where the next line begins. */
  readonly next: number;
}

/** The lines of `text` from offset `from` on. CommonMark's line endings: LF, CR LF and CR. */
export function* linesOf(text: string, from = 0, to: number = text.length): Generator<Line> {
  const ending = /\r\n|\r|\n/g;
  ending.lastIndex = from;
  for (let at = from; at < to; ) {
    const found = ending.exec(text);
    if (found === null || found.index >= to) {
      yield { from: at, to, next: to };
      return;
    }
    yield { from: at, to: found.index, next: ending.lastIndex };
    at = ending.lastIndex;
  }
}
