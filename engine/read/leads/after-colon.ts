import type { PhrasingContent } from '../../parse/parse-body.ts';
import { spanOf } from '../prose/span-of.ts';

/** The running text after `Do:` or `Stop:`, whose first `length` characters are the opening. */
export function afterColon(nodes: readonly PhrasingContent[], length: number): PhrasingContent[] {
  const [first, ...rest] = nodes;
  if (first?.type !== 'text') return rest;
  const value = first.value.slice(length);
  if (value === '') return rest;
  const { from, to } = spanOf(first);
  const position = first.position && {
    start: { ...first.position.start, offset: Math.min(from + length, to) },
    end: first.position.end,
  };
  return [{ type: 'text', value, ...(position && { position }) }, ...rest];
}
