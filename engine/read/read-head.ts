import type { Staged } from '../diagnostics/staged.ts';
import { type Heading, parseBody } from '../parse/parse-body.ts';
import { proseOf } from './prose/prose-of.ts';
import { readInlines } from './prose/read-inlines.ts';
import { spanOf } from './prose/span-of.ts';
import { wordsOf } from './prose/words-of.ts';
import { readContext, report } from './read-context.ts';
import { readParts } from './read-parts.ts';
import type { HeadSyntax } from './section-syntax.ts';

/** Reads what stands above the first section: the title, hazards and an introduction. */
export function readHead(text: string): Staged<HeadSyntax> {
  const context = readContext(text);
  const nodes = parseBody({ text, from: 0 }).children;
  const isTitle = (node: (typeof nodes)[number]): node is Heading =>
    node.type === 'heading' && node.depth === 1;
  const heading = nodes.find(isTitle);
  const parts = readParts(
    nodes.filter((node) => node !== heading),
    context,
  );
  for (const part of parts) {
    if (part.kind === 'lead')
      report(context, { code: 'lead-above-sections', word: part.lead.word }, part.span);
    if (part.kind === 'outcomes') report(context, { code: 'outcomes-without-read' }, part.span);
  }
  const title = heading
    ? { text: wordsOf(readInlines(heading.children, context)).trim(), span: spanOf(heading) }
    : null;
  const { codes, braces, links } = context;
  return {
    value: { title, mentions: { codes, braces, links }, ...proseOf(parts) },
    diagnostics: context.diagnostics,
  };
}
