import type { Fix } from '../diagnostics/diagnostic.ts';
import type { Path } from '../model/front-matter.ts';
import type { Span } from '../model/span.ts';
import type { TextProblem } from '../model/text-problem.ts';
import type { FactsContext } from './facts-context.ts';

/**
 * Tells problems inside a text of the front-matter at their places in the file.
 *
 *     expect: 5 V ± 5 %        plain: offsets are those of the text
 *     expect: "5 V ± 5 %"      in quotes: one further
 *
 * Where quotes hold escapes or the text runs over several lines, the whole value is marked.
 */
export function textProblems(
  text: string,
  path: Path,
  part: 'key' | 'value',
  problems: readonly TextProblem[],
  context: FactsContext,
): void {
  const whole = context.spanOf(path, part);
  const shift = { 0: 0, 2: 1 }[whole.to - whole.from - text.length];
  const placed = ({ from, to }: Span): Span =>
    shift === undefined ? whole : { from: whole.from + shift + from, to: whole.from + shift + to };
  for (const { from, to, related, ...facts } of problems) {
    const span = placed({ from, to });
    const fix = shift === undefined ? undefined : fixOf(facts as TextProblem, text.slice(from, to), span);
    context.at(span, facts as TextProblem, {
      ...(fix && { fix }),
      ...(related && shift !== undefined && { related: placed(related) }),
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
