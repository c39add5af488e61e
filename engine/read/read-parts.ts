import type { Blockquote, Code, RootContent } from '../parse/parse-body.ts';
import { hasArrow, leadsToSection } from './arrows.ts';
import { readHazard } from './hazards/read-hazard.ts';
import { sectionKinds } from './kinds/index.ts';
import { leadLines } from './leads/index.ts';
import { laterLines, linesOf } from './lines.ts';
import type { Part } from './parts.ts';
import { readBlocks, readQuoted } from './prose/read-blocks.ts';
import { spanOf } from './prose/span-of.ts';
import { type ReadContext, replacing, report } from './read-context.ts';
import { checkHeading, checkUnspacedHeading } from './read-heading.ts';
import { isOutcomeList, outdent, readOutcomes } from './read-outcomes.ts';
import { leadLineThatBegins, readParagraph } from './read-paragraph.ts';

/** The blocks of a section or of the head, each sorted by what it is for. */
export function readParts(nodes: readonly RootContent[], context: ReadContext): Part[] {
  const paragraphs = new Map(
    nodes.flatMap((node) =>
      node.type === 'paragraph' ? [[node, readParagraph(node, context)] as const] : [],
    ),
  );
  const branches = [...paragraphs.values()].some((parts) => parts.some(makesBranches));
  return nodes.flatMap((node) => {
    if (node.type === 'paragraph') {
      checkUnspacedHeading(node, context);
      checkOutcomeLines(node, context);
      return paragraphs.get(node) ?? [];
    }
    return readOther(node, branches, context);
  });
}

/** `Read` and `Follow` are followed by a list of outcomes. */
function makesBranches(part: Part): boolean {
  const kind = part.kind === 'lead' ? leadLines[part.lead.word].makes : null;
  return kind !== null && sectionKinds[kind].branches;
}

function readOther(node: RootContent, branches: boolean, context: ReadContext): Part[] {
  switch (node.type) {
    case 'blockquote':
      return readQuote(node, context);
    case 'list':
      if (isOutcomeList(node, context.text, branches)) return readOutcomes(node, context);
      break;
    case 'code':
      checkIndented(node, context);
      break;
    case 'heading':
      checkHeading(node, context);
      break;
    default:
  }
  const span = spanOf(node);
  return readBlocks([node], context).map((block) => ({ kind: 'prose', block, span }));
}

function readQuote(quote: Blockquote, context: ReadContext): Part[] {
  const span = spanOf(quote);
  checkMarkers(span, context);
  const quoted = readQuoted(quote, context);
  const hazard = readHazard(quoted, span, context);
  if (hazard) return [{ kind: 'hazard', hazard, span }];
  return [{ kind: 'prose', block: { type: 'quote', children: quoted }, span }];
}

/** A paragraph in a quote goes on in a line without `>`: what stands there would become part of the hazard. */
function checkMarkers(span: { from: number; to: number }, context: ReadContext): void {
  for (const line of laterLines(context.text, span)) {
    if (line.text.startsWith('>') || line.text === '') continue;
    const place = { from: line.from, to: line.from };
    const lead = leadLineThatBegins(line.text) !== undefined;
    const fix = lead ? replacing('Insert an empty line', place, '\n') : replacing('Insert ">"', place, '> ');
    report(
      context,
      { code: 'lazy-quote', line: line.text },
      { from: line.from, to: line.from + line.text.length },
      fix,
    );
  }
}

/** Four spaces make code of a line; an outcome there would be lost. */
function checkIndented(code: Code, context: ReadContext): void {
  const span = spanOf(code);
  const fenced = /^[ \t]*[`~]/.test(context.text.slice(span.from, span.from + 8));
  if (!fenced && code.value.split('\n').some(leadsToSection)) {
    report(context, { code: 'indented-outcome' }, span, outdent(context.text, span));
  }
}

/** An outcome in running text is none. */
function checkOutcomeLines(node: RootContent, context: ReadContext): void {
  const span = spanOf(node);
  if (!context.text.slice(span.from, span.to).includes('](')) return;
  for (const line of linesOf(context.text, span)) {
    if (!leadsToSection(line.text) || !hasArrow(line.text) || /^[*_]*then\b/i.test(line.text)) continue;
    if (/^(?:→|->)/.test(line.text)) continue;
    const marker = /^(?:[-–—*+•]|\d+[.)])?\s*/.exec(line.text)?.[0] ?? '';
    const fix = replacing(
      'Make it a line of the list',
      { from: line.from, to: line.from + marker.length },
      '- ',
    );
    report(
      context,
      { code: 'outcome-in-paragraph' },
      { from: line.from, to: line.from + line.text.length },
      fix,
    );
  }
}
