import { slug } from 'github-slugger';
import type { Inline } from '../model/prose.ts';
import type { Link, PhrasingContent } from '../parse/parse-body.ts';
import { arrowBefore, arrows } from './arrows.ts';
import type { Piece } from './leads/lead-line.ts';
import { parseCondition } from './parse-condition.ts';
import { readInlines } from './prose/read-inlines.ts';
import { readLink } from './prose/read-link.ts';
import { spanOf } from './prose/span-of.ts';
import { type ReadContext, replacing, report } from './read-context.ts';
import { reportCondition } from './report-condition.ts';
import type { LinkSyntax, OutcomeSyntax } from './section-syntax.ts';

/** One line of an outcome list; null where not even an arrow can be found.
 *
 *     power_good is low → [No power-good](#no-power-good), the supply is the first suspect
 *     └── condition ──┘   └──────────── link ───────────┘  └────────── remark ───────────┘
 */
export function readOutcome(piece: Piece, context: ReadContext): OutcomeSyntax | null {
  const at = piece.nodes.findIndex((node) => node.type === 'link');
  const link = piece.nodes[at];
  if (link?.type !== 'link') return withoutLink(piece, context);
  const from = piece.span.from;
  const before = context.text.slice(from, spanOf(link).from);
  return {
    ...conditionOf(
      before.slice(0, checkArrow(before, from, context)),
      from,
      piece.nodes.slice(0, at),
      context,
    ),
    link: outcomeLink(link, context),
    remark: remarkOf(piece.nodes.slice(at + 1), context),
  };
}

/** Where the condition ends; an arrow that is missing or written otherwise is reported. */
function checkArrow(before: string, from: number, context: ReadContext): number {
  const arrow = arrowBefore(before);
  if (arrow?.right) return arrow.from;
  const end = from + before.length;
  if (arrow === null) {
    const insert = /\s$/.test(before) ? '→ ' : ' → ';
    const fix = replacing('Insert an arrow', { from: end, to: end }, insert);
    if (before.trim() !== '') report(context, { code: 'outcome-without-arrow' }, { from, to: end }, fix);
    return before.length;
  }
  const span = { from: from + arrow.from, to: from + arrow.from + arrow.found.length };
  report(context, { code: 'arrow-form', found: arrow.found }, span, replacing('Write "→"', span, '→'));
  return arrow.from;
}

function conditionOf(
  raw: string,
  base: number,
  nodes: readonly PhrasingContent[],
  context: ReadContext,
): Pick<OutcomeSyntax, 'condition' | 'written' | 'span'> {
  const written = raw.trim();
  const from = base + raw.length - raw.trimStart().length;
  const span = { from, to: from + written.length };
  const html = nodes.find((node) => node.type === 'html');
  if (html?.type === 'html') {
    report(context, { code: 'html', text: html.value }, spanOf(html));
    return { condition: null, written, span };
  }
  if (written === '') {
    report(
      context,
      { code: 'outcome-without-condition' },
      { from: base, to: base + Math.max(1, raw.length) },
    );
    return { condition: null, written, span };
  }
  const parsed = parseCondition(written);
  reportCondition(parsed, from, context);
  return { condition: parsed.condition, written, span };
}

function outcomeLink(node: Link, context: ReadContext): LinkSyntax | null {
  const link = readLink(node, context);
  if (link.section !== null || link.file !== null) return link;
  report(context, { code: 'outcome-elsewhere', url: link.url }, link.span);
  return null;
}

const punctuation = /^\s*[,.:;–—-]?\s*/;

function remarkOf(nodes: readonly PhrasingContent[], context: ReadContext): readonly Inline[] {
  const [first, ...rest] = readInlines(nodes, context);
  if (first === undefined) return [];
  if (first.type !== 'text') return [first, ...rest];
  const value = first.value.replace(punctuation, '');
  return value === '' ? rest : [{ type: 'text', value }, ...rest];
}

function withoutLink(piece: Piece, context: ReadContext): OutcomeSyntax | null {
  const { text, span } = piece;
  const [at, arrow] = firstArrow(text);
  if (arrow === null) {
    report(context, { code: 'outcome-without-arrow' }, span);
    return null;
  }
  const after = text.slice(at + arrow.length).trim();
  const from = span.from + text.indexOf(after, at + arrow.length);
  const place = after === '' ? span : { from, to: from + after.length };
  const link = linkFor(after);
  const fix = link === null ? undefined : replacing(`Write "${link}"`, place, link);
  report(context, { code: 'outcome-without-link', text: after }, place, fix);
  return { ...conditionOf(text.slice(0, at), span.from, piece.nodes, context), link: null, remark: [] };
}

function firstArrow(text: string): [number, string | null] {
  for (const arrow of arrows) {
    const at = text.indexOf(arrow);
    if (at >= 0) return [at, arrow];
  }
  return [text.length, null];
}

/** The link that a title, or a bare `<#slug>`, most likely stands for. */
function linkFor(text: string): string | null {
  const bare = /^<?#([^\s>]+)>?$/.exec(text)?.[1];
  if (bare !== undefined) return `[${bare}](#${bare})`;
  const id = slug(text);
  return id === '' || text.length > 80 || /[[\]()<>`\n]/.test(text) ? null : `[${text}](#${id})`;
}
