import type { Fix } from '../diagnostics/diagnostic.ts';
import type { Path } from '../model/front-matter.ts';
import type { Span } from '../model/span.ts';
import type { TextProblem } from '../model/text-problem.ts';
import type { FactsContext } from './facts-context.ts';
import { placeInText } from './place-in-text.ts';

/** Tells problems inside a text of the front-matter at their places in the file. */
export function textProblems(
  text: string,
  path: Path,
  part: 'key' | 'value',
  problems: readonly TextProblem[],
  context: FactsContext,
): void {
  const whole = context.spanOf(path, part);
  for (const { from, to, related, ...facts } of problems) {
    const span = placeInText(text, whole, { from, to });
    const fix = span === null ? undefined : fixOf(facts as TextProblem, text.slice(from, to), span);
    const other = related && placeInText(text, whole, related);
    context.at(span ?? whole, facts as TextProblem, {
      ...(fix && { fix }),
      ...(other && { related: other }),
    });
  }
}

/** Where the problem itself says what to write in its place. */
function fixOf(facts: TextProblem, marked: string, span: Span): Fix | undefined {
  const [written, instead] = replacementOf(facts);
  if (instead === null || written !== marked) return undefined;
  return { title: `Write "${instead}"`, edits: [{ ...span, insert: instead }] };
}

function replacementOf(facts: TextProblem): readonly [string, string | null] {
  switch (facts.code) {
    case 'decimal-comma':
      return [facts.text, facts.instead];
    case 'not-a-quantity':
      return [facts.text, facts.near];
    case 'unknown-unit':
      return [facts.unit, facts.near];
    case 'unknown-name':
    case 'unknown-function':
      return [facts.name, facts.near.length === 1 ? (facts.near[0] ?? null) : null];
    default:
      return ['', null];
  }
}
