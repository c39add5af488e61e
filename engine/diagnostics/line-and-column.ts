/** Where a line begins and ends, and its number from 1. */
export interface PlacedLine {
  readonly number: number;
  readonly from: number;
  /** Without the line ending. */
  readonly to: number;
}

/** The line that holds `offset`. */
export function lineOf(text: string, offset: number): PlacedLine {
  const starts = startsOf(text);
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  const from = starts[low] ?? 0;
  const next = starts[low + 1] ?? text.length;
  return { number: low + 1, from, to: from + text.slice(from, next).replace(/[\r\n]+$/, '').length };
}

/** UTF-16 units from the beginning of the line, counted from 1. */
export const columnOf = (text: string, offset: number): number => offset - lineOf(text, offset).from + 1;

/** The text whose lines were counted last: the diagnostics of a file are asked for one after the other. */
let counted: { readonly text: string; readonly starts: readonly number[] } = { text: '', starts: [0] };

function startsOf(text: string): readonly number[] {
  if (counted.text === text) return counted.starts;
  const starts = [
    0,
    ...[...text.matchAll(/\r\n|\r|\n/g)].map(({ index, 0: ending }) => index + ending.length),
  ];
  counted = { text, starts };
  return starts;
}
