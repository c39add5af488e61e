import type { PhrasingContent } from '../../parse/parse-body.ts';
import type { Named } from '../named.ts';
import { spanOf } from '../prose/span-of.ts';

/** The name in a code span, and its place inside the backticks. */
export function nameInCode(node: Extract<PhrasingContent, { readonly type: 'inlineCode' }>): Named {
  const { from, to } = spanOf(node);
  const ticks = Math.max(1, Math.floor((to - from - node.value.length) / 2));
  return { name: node.value, from: from + ticks, to: to - ticks };
}
