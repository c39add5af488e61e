import { describe } from './describe.ts';
import type { Diagnostic } from './diagnostic.ts';
import { excerpt } from './excerpt.ts';
import { columnOf, lineOf } from './line-and-column.ts';
import { printable } from './printable.ts';

/**
 * A problem as the terminal shows it.
 *
 *     trees/reset.md:12:11: error leading-greater: YAML takes the ">" of …
 *     12 |   expect: >= 4 V
 *        |           ^^^^^^
 *     Write "at least 4 V", or "≥" in one sign
 */
export function formatDiagnostic(file: string, text: string, diagnostic: Diagnostic): string {
  const { severity, wrong, mend } = describe(diagnostic);
  const { span, related, fix, code } = diagnostic;
  const place = `${file}:${lineOf(text, span.from).number}:${columnOf(text, span.from)}`;
  return [
    printable(`${place}: ${severity} ${code}: ${wrong}`),
    excerpt(text, span),
    printable(mend),
    ...(fix ? [printable(`Fix: ${fix.title}`)] : []),
    ...(related ? [`See line ${lineOf(text, related.from).number}:`, excerpt(text, related)] : []),
  ].join('\n');
}
