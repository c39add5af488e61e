/** Thousandths of the letter size that signs take in the sans-serif faces every system has; the widest of the usual
 *  ones where they differ (from memory: the metrics of Helvetica and what is made to fit it). */
const widths: readonly (readonly [signs: RegExp, width: number])[] = [
  [/[\p{M}\u200B-\u200F]/u, 0],
  [/[Mm@%W→±≥≤…–—ΩØ]/u, 960],
  [/[CDHNRUGOQw]/, 780],
  [/[ijl'|]/, 240],
  [/[ \t!,.:;fIt/\\[\]()]/, 300],
  [/[-"*r`{}]/, 370],
  [/[Jckszvxy]/, 500],
  [/[a-z0-9_?#$<>=+~^]/, 570],
  [/[ABEKPSVXYFTLZ&]/, 680],
  [/[\u1100-\u11FF\u2E80-\uD7FF\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60]/u, 1000],
  [/\p{Extended_Pictographic}/u, 1300],
  [/\p{Lu}/u, 800],
];
const other = 640;

const known = new Map<string, number>();

function signWidth(sign: string): number {
  const before = known.get(sign);
  if (before !== undefined) return before;
  const width = (widths.find(([signs]) => signs.test(sign)) ?? [null, other])[1];
  if (known.size < 4096) known.set(sign, width);
  return width;
}

/** How wide a text becomes at most, in the unit of `size`. */
export function textWidth(text: string, size: number, bold = false): number {
  let width = 0;
  for (const sign of text) width += signWidth(sign);
  return ((width * (bold ? 1.08 : 1)) / 1000) * size;
}
