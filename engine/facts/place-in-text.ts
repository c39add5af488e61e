import type { Span } from '../model/span.ts';

/**
 * Where a part of a text of the front-matter stands in the file; null where that is not to be known.
 *
 *     expect: 5 V ± 5 %        plain: offsets are those of the text
 *     expect: "5 V ± 5 %"      in quotes: one further
 *
 * Where quotes hold escapes or the text runs over several lines, only the whole has a place.
 */
export function placeInText(text: string, whole: Span, { from, to }: Span): Span | null {
  const shift = { 0: 0, 2: 1 }[whole.to - whole.from - text.length];
  return shift === undefined ? null : { from: whole.from + shift + from, to: whole.from + shift + to };
}
