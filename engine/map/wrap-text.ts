import { textWidth } from './text-width.ts';

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Text in lines no wider than `width`: broken between words, behind hyphens, and inside a word that is too long for
 *  a line. Nothing is left out but the white space at the breaks. */
export function wrapText(text: string, width: number, size: number, bold = false): readonly string[] {
  const fits = (line: string): boolean => textWidth(line, size, bold) <= width;
  const lines: string[] = [];
  let line = '';
  for (const piece of pieces(text, fits)) {
    if (line === '' || fits((line + piece).trimEnd())) line += line === '' ? piece.trimStart() : piece;
    else {
      lines.push(line.trimEnd());
      line = piece.trimStart();
    }
  }
  if (line.trim() !== '') lines.push(line.trimEnd());
  return lines;
}

/** Words with the space behind them; what is too long for a line, in single signs. */
const pieces = (text: string, fits: (word: string) => boolean): readonly string[] =>
  (text.match(/\s+|[^\s-]+-*\s*|-+\s*/gu) ?? []).flatMap((word) =>
    fits(word.trimEnd()) ? [word] : [...graphemes.segment(word)].map(({ segment }) => segment),
  );
