import type { Heading, Paragraph } from '../parse/parse-body.ts';
import { lineStart, linesOf } from './lines.ts';
import { spanOf } from './prose/span-of.ts';
import { type ReadContext, replacing, report } from './read-context.ts';

/** A heading inside a section or the head: `### ` and deeper is prose, everything else is a mistake. */
export function checkHeading(heading: Heading, context: ReadContext): void {
  const span = spanOf(heading);
  const written = context.text.slice(span.from, span.to);
  if (!written.startsWith('#')) {
    const underline = lineStart(context.text, span.to);
    const fix = replacing('Insert an empty line', { from: underline, to: underline }, '\n');
    report(context, { code: 'setext-heading', text: linesOf(context.text, span)[0]?.text ?? '' }, span, fix);
  } else if (heading.depth === 1) {
    report(
      context,
      { code: 'top-heading' },
      span,
      replacing('Write "##"', { from: span.from, to: span.from + 1 }, '##'),
    );
  } else if (heading.depth === 2) {
    const start = lineStart(context.text, span.from);
    const opening = /^#+[ \t]*/.exec(written)?.[0].length ?? 2;
    const place = { from: start, to: span.from + opening };
    if (context.text.slice(start, span.from).trim() === '') {
      report(context, { code: 'section-form' }, span, replacing('Write "## "', place, '## '));
    }
  }
}

/** `##Title` without the space is no heading at all. */
export function checkUnspacedHeading(paragraph: Paragraph, context: ReadContext): void {
  const { from, to } = spanOf(paragraph);
  if (!/^##(?=[^#\s])/.test(context.text.slice(from, from + 4))) return;
  const [first] = linesOf(context.text, { from, to });
  const span = { from, to: from + (first?.text.length ?? 0) };
  report(context, { code: 'section-form' }, span, replacing('Write "## "', { from, to: from + 2 }, '## '));
}
