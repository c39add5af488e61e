import { slug } from 'github-slugger';
import type { Staged } from '../diagnostics/staged.ts';
import type { Span } from '../model/span.ts';
import { parseBody, type Root } from '../parse/parse-body.ts';
import { buildSection } from './build-section.ts';
import { proseOf } from './prose/prose-of.ts';
import { readInlines } from './prose/read-inlines.ts';
import { spanOf } from './prose/span-of.ts';
import { wordsOf } from './prose/words-of.ts';
import { type ReadContext, readContext, report } from './read-context.ts';
import { readParts } from './read-parts.ts';
import { risksOf } from './risks/risks-of.ts';
import type { SectionSyntax } from './section-syntax.ts';

/** Problems after which it is no wonder that a lead line or an outcome is missing. */
const swallowing: ReadonlySet<string> = new Set([
  'lazy-quote',
  'outcome-in-paragraph',
  'indented-outcome',
  'outcome-without-arrow',
]);

/** Reads one section, from its `## ` line to the next. Needs nothing but its text, so the result can be
 *  kept for as long as the text is the same. Offsets, those of the diagnostics too, count from its start. */
export function readSection(text: string): Staged<SectionSyntax> {
  const context = readContext(text);
  const root = parseBody({ text, from: 0 });
  const { title, titleSpan, body } = openingOf(root, context);
  const id = slug(title);
  if (!/[\p{L}\p{N}]/u.test(id)) report(context, { code: 'empty-heading' }, titleSpan);
  const parts = readParts(body, context);
  const { codes, braces, links } = context;
  const doubtful = context.diagnostics.some(({ code }) => swallowing.has(code));
  const base = {
    id,
    title,
    titleSpan,
    leadSpan: titleSpan,
    mentions: { codes, braces, links },
    risks: risksOf(parts, text),
    doubtful,
    ...proseOf(parts),
  };
  return { value: buildSection(base, parts, context), diagnostics: context.diagnostics };
}

function openingOf(
  root: Root,
  context: ReadContext,
): { title: string; titleSpan: Span; body: Root['children'] } {
  const [heading, ...body] = root.children;
  if (heading?.type !== 'heading') return { title: '', titleSpan: { from: 0, to: 0 }, body: root.children };
  return { title: wordsOf(readInlines(heading.children, context)).trim(), titleSpan: spanOf(heading), body };
}
