import type { Span } from '../model/span.ts';
import type { PhrasingContent } from '../parse/parse-body.ts';
import { linesOf as cutLines } from '../source/lines-of.ts';
import { spanOf } from './prose/span-of.ts';

/** A line of a paragraph: its text without the indentation, and where that begins. */
export interface Line {
  readonly text: string;
  readonly from: number;
}

const lineBreak = /\r\n|\r|\n/g;

/** The lines of what stands at `span`. */
export const linesOf = (text: string, span: Span): Line[] =>
  [...cutLines(text, span.from, span.to)].map(({ from, to }) => {
    const line = text.slice(from, to);
    const trimmed = line.trimStart();
    return { text: trimmed.trimEnd(), from: from + line.length - trimmed.length };
  });

/** The second and later lines of what stands at `span`. */
export const laterLines = (text: string, span: Span): Line[] => linesOf(text, span).slice(1);

/** Where the line begins that holds `at`. */
export const lineStart = (text: string, at: number): number =>
  at === 0 ? 0 : Math.max(text.lastIndexOf('\n', at - 1), text.lastIndexOf('\r', at - 1)) + 1;

/** Running text cut at the beginnings of lines, so that what a paragraph swallowed can be read after all.
 *
 *     Fault `x`.⏎Prove `y`.   cut at P   →   [Fault `x`.] [Prove `y`.]
 */
export function cutAtLines(
  nodes: readonly PhrasingContent[],
  text: string,
  cuts: readonly number[],
): PhrasingContent[][] {
  const pieces: PhrasingContent[][] = [];
  let rest: readonly PhrasingContent[] = nodes;
  for (const cut of cuts) {
    const [before, after] = cutOnce(rest, text, cut);
    pieces.push(before);
    rest = after;
  }
  return [...pieces, [...rest]];
}

function cutOnce(
  nodes: readonly PhrasingContent[],
  text: string,
  cut: number,
): [PhrasingContent[], PhrasingContent[]] {
  const before: PhrasingContent[] = [];
  const after: PhrasingContent[] = [];
  for (const node of nodes) {
    const { from, to } = spanOf(node);
    if (to <= cut) before.push(node);
    else if (from >= cut || node.type !== 'text') after.push(node);
    else {
      const value = node.value;
      const at = afterLineEnd(value, text.slice(from, cut).split(lineBreak).length - 1);
      const position = node.position;
      before.push({
        type: 'text',
        value: value.slice(0, at).trimEnd(),
        ...(position && { position: moved(position, from, cut) }),
      });
      after.push({
        type: 'text',
        value: value.slice(at),
        ...(position && { position: moved(position, cut, to) }),
      });
    }
  }
  return [before, after];
}

/** The parser drops indentation from the value of a text, so lines are counted instead of characters. */
function afterLineEnd(value: string, lines: number): number {
  let at = 0;
  for (let line = 0; line < lines; line += 1) {
    lineBreak.lastIndex = at;
    if (!lineBreak.test(value)) break;
    at = lineBreak.lastIndex;
  }
  lineBreak.lastIndex = 0;
  return at;
}

type Position = NonNullable<PhrasingContent['position']>;

const moved = (position: Position, from: number, to: number): Position => ({
  start: { ...position.start, offset: from },
  end: { ...position.end, offset: to },
});
