import type { PhrasingContent } from '../../parse/parse-body.ts';
import type { Named } from '../named.ts';
import { nameInCode } from './name-in-code.ts';

/** Code spans and the texts around them, one more text than spans. */
export interface SpansBetween {
  readonly spans: readonly Named[];
  readonly texts: readonly string[];
}

/**
 * Running text that is texts and code spans in turn, beginning and ending with a text; null if anything else is there.
 *
 *     Read  `v5` ,  `pg` .
 *     text  span text span text
 */
export function spansBetween(nodes: readonly PhrasingContent[]): SpansBetween | null {
  if (nodes.length % 2 === 0) return null;
  const spans: Named[] = [];
  const texts: string[] = [];
  for (const [index, node] of nodes.entries()) {
    if (index % 2 === 1) {
      if (node.type !== 'inlineCode') return null;
      spans.push(nameInCode(node));
    } else {
      if (node.type !== 'text') return null;
      texts.push(node.value);
    }
  }
  return { spans, texts };
}

/** What may stand between two names of a lead line. */
export const isJoin = (text: string): boolean => /^\s*(?:,|and|,\s*and)\s*$/.test(text);
