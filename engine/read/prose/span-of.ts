import type { Span } from '../../model/span.ts';

interface Positioned {
  readonly position?:
    | {
        readonly start: { readonly offset?: number | undefined };
        readonly end: { readonly offset?: number | undefined };
      }
    | undefined;
}

/** Where a node stands in the text it was parsed from. */
export function spanOf(node: Positioned): Span {
  const from = node.position?.start.offset ?? 0;
  return { from, to: node.position?.end.offset ?? from };
}
