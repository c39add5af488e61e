import type { List, ListItem, Paragraph } from '../parse/parse-body.ts';
import { hasArrow, leadsToSection } from './arrows.ts';
import { leadLines } from './leads/index.ts';
import type { LeadWord, Piece } from './leads/lead-line.ts';
import { type Line, laterLines, lineStart, linesOf } from './lines.ts';
import type { Part } from './parts.ts';
import { spanOf } from './prose/span-of.ts';
import { type ReadContext, replacing, report } from './read-context.ts';
import { readOutcome } from './read-outcome.ts';
import { leadLineThatBegins, piecesOf } from './read-paragraph.ts';
import type { OutcomeSyntax } from './section-syntax.ts';

/** Whether a list holds outcomes. Below a `Read` or `Follow` any arrow says so; elsewhere only one that leads to a section
 *  or to another file. */
export function isOutcomeList(list: List, text: string, branches: boolean): boolean {
  return list.children.some((item) => {
    const line = linesOf(text, spanOf(item))[0]?.text ?? '';
    return leadsToSection(line) || (branches && hasArrow(line));
  });
}

/** The outcomes of a list, and lead lines that its last lines swallowed. */
export function readOutcomes(list: List, context: ReadContext): Part[] {
  checkMarker(list, context);
  const gathered: Gathered = { outcomes: [], leads: [] };
  for (const item of list.children) readItem(item, context, gathered);
  return [{ kind: 'outcomes', outcomes: gathered.outcomes, span: spanOf(list) }, ...gathered.leads];
}

interface Gathered {
  readonly outcomes: OutcomeSyntax[];
  readonly leads: Part[];
}

const markerPattern = /^(?:[-*+]|\d{1,9}[.)])/;

function checkMarker(list: List, context: ReadContext): void {
  const markers = list.children.map((item) => {
    const { from } = spanOf(item);
    const marker = markerPattern.exec(context.text.slice(from, from + 12))?.[0] ?? '-';
    return { marker, from, to: from + marker.length };
  });
  const first = markers[0];
  if (first === undefined || first.marker === '-') return;
  const edits = markers.map(({ from, to }) => ({ from, to, insert: '-' }));
  const code = list.ordered ? 'ordered-outcomes' : 'list-marker';
  report(context, { code, marker: first.marker }, first, { title: 'Begin each line with "-"', edits });
}

function readItem(item: ListItem, context: ReadContext, gathered: Gathered): void {
  const [first, ...others] = item.children;
  if (first?.type !== 'paragraph') {
    report(context, { code: 'outcome-without-arrow' }, spanOf(item));
    return;
  }
  readLine(first, context, gathered);
  for (const node of others) {
    const span = spanOf(node);
    if (node.type === 'list' && isOutcomeList(node, context.text, true)) {
      report(context, { code: 'nested-outcome' }, span, outdent(context.text, span));
      for (const inner of node.children) readItem(inner, context, gathered);
    } else report(context, { code: 'outcome-extra' }, span);
  }
}

/** An outcome is one line; a remark may run over several, but not over the next outcome or a lead line. */
function readLine(paragraph: Paragraph, context: ReadContext, gathered: Gathered): void {
  const span = spanOf(paragraph);
  const swallowed = laterLines(context.text, span).filter(
    (line) => hasArrow(line.text) || leadLineThatBegins(line.text) !== undefined,
  );
  for (const line of swallowed) reportSwallowed(line, context);
  const cuts = swallowed.map((line) => line.from);
  for (const piece of piecesOf(paragraph, span, cuts, context)) readPiece(piece, context, gathered);
}

function reportSwallowed(line: Line, context: ReadContext): void {
  const lead = leadLineThatBegins(line.text) !== undefined;
  const marker = lead ? '' : (/^[-–—*+•]?\s*/.exec(line.text)?.[0] ?? '');
  const place = { from: line.from, to: line.from + marker.length };
  const fix = lead
    ? replacing('Insert an empty line', place, '\n')
    : replacing('Make it a line of the list', place, '- ');
  report(
    context,
    { code: 'swallowed-line', line: line.text },
    { from: line.from, to: line.from + line.text.length },
    fix,
  );
}

function readPiece(piece: Piece, context: ReadContext, gathered: Gathered): void {
  const row = leadLineThatBegins(piece.text);
  const lead = row && leadLines[row.word as LeadWord].read(piece, context);
  if (lead) {
    gathered.leads.push({ kind: 'lead', lead, span: piece.span });
    return;
  }
  const marker = /^[-–—*+•]\s+/.exec(piece.text)?.[0].length ?? 0;
  const from = piece.span.from + marker;
  const outcome = readOutcome(
    { ...piece, text: piece.text.slice(marker), span: { ...piece.span, from } },
    context,
  );
  if (outcome) gathered.outcomes.push(outcome);
}

/** Takes the indentation from every line of what stands at `span`. */
export function outdent(text: string, span: { from: number; to: number }) {
  const start = lineStart(text, span.from);
  const edits = [...text.slice(start, span.to).matchAll(/^[ \t]+/gm)].map((match) => ({
    from: start + match.index,
    to: start + match.index + match[0].length,
    insert: '',
  }));
  return { title: 'Take the indentation away', edits };
}
