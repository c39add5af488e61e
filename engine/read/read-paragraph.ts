import type { Span } from '../model/span.ts';
import type { Paragraph } from '../parse/parse-body.ts';
import { refuseHiddenHazard } from './hazards/refuse-hidden-hazard.ts';
import { leadLineList } from './leads/index.ts';
import type { LeadLine, Piece } from './leads/lead-line.ts';
import { cutAtLines, type Line, laterLines } from './lines.ts';
import type { Part } from './parts.ts';
import { readInlines } from './prose/read-inlines.ts';
import { spanOf } from './prose/span-of.ts';
import { type ReadContext, replacing, report } from './read-context.ts';

/** Near misses are looked for in paragraphs no longer than a lead line can be. */
const longestLeadLine = 300;

/** A paragraph of a section: a lead line, or prose. A lead line that was swallowed by the paragraph
 *  above it is reported and read all the same. */
export function readParagraph(paragraph: Paragraph, context: ReadContext): Part[] {
  const span = spanOf(paragraph);
  const swallowed = laterLines(context.text, span).flatMap((line) => {
    const row = leadLineThatBegins(line.text);
    return row ? [{ line, row }] : [];
  });
  for (const { line, row } of swallowed) reportSwallowed(line, row, context);
  const cuts = swallowed.map(({ line }) => line.from);
  return piecesOf(paragraph, span, cuts, context).map((piece) => readPiece(piece, context));
}

export const leadLineThatBegins = (line: string): LeadLine | undefined =>
  leadLineList.find((row) => line.startsWith(row.word) && row.begins.test(line));

function reportSwallowed(line: Line, row: LeadLine, context: ReadContext): void {
  const span = { from: line.from, to: line.from + line.text.length };
  const fix = replacing('Insert an empty line', { from: line.from, to: line.from }, '\n');
  report(context, { code: 'lead-inside-paragraph', word: row.word }, span, fix);
}

/** The paragraph cut at the beginnings of lines. */
export function piecesOf(
  paragraph: Paragraph,
  span: Span,
  cuts: readonly number[],
  context: ReadContext,
): Piece[] {
  if (cuts.length === 0) {
    return [{ nodes: paragraph.children, text: context.text.slice(span.from, span.to), span }];
  }
  const starts = [span.from, ...cuts];
  return cutAtLines(paragraph.children, context.text, cuts).map((nodes, index) => {
    const from = starts[index] ?? span.from;
    const text = context.text.slice(from, starts[index + 1] ?? span.to).trimEnd();
    return { nodes, text, span: { from, to: from + text.length } };
  });
}

function readPiece(piece: Piece, context: ReadContext): Part {
  for (const row of leadLineList) {
    const lead = piece.text.startsWith(row.word) ? row.read(piece, context) : null;
    if (lead) return { kind: 'lead', lead, span: piece.span };
  }
  if (piece.text.length <= longestLeadLine) reportNear(piece, context);
  const block = { type: 'paragraph' as const, children: readInlines(piece.nodes, context) };
  refuseHiddenHazard(block, 0, piece.span, context);
  return { kind: 'prose', block, span: piece.span };
}

function reportNear(piece: Piece, context: ReadContext): void {
  for (const row of leadLineList) {
    const near = row.near(piece.text);
    if (near === null) continue;
    const fix =
      near.instead === null ? undefined : replacing(`Write "${near.instead}"`, piece.span, near.instead);
    report(context, { code: 'near-lead-line', word: row.word, form: row.form }, piece.span, fix);
    return;
  }
}
