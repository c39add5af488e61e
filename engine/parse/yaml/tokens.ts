import type { CST } from 'yaml';
import type { Span } from '../../model/span.ts';

type Token = CST.Token | CST.SourceToken;

/** How deep tables and lists lie in each other. Counted without recursion, before anything recurses.
 *  @param enough nothing is counted where the text cannot be as deep as this */
export function depthOf(tokens: readonly CST.Token[], text: string, enough: number): number {
  if (deepestPossible(text) <= enough) return 0;
  let deepest = 0;
  for (const { token, depth } of walk(tokens)) {
    if ('items' in token && Array.isArray(token.items)) deepest = Math.max(deepest, depth + 1);
  }
  return deepest;
}

/** The comments, from their `#` to the end of the line. */
export function commentsOf(tokens: readonly CST.Token[], text: string): readonly Span[] {
  const comments: Span[] = [];
  if (!text.includes('#')) return comments;
  for (const { token } of walk(tokens)) {
    if (token.type === 'comment')
      comments.push({ from: token.offset, to: token.offset + token.source.length });
  }
  return comments.sort((a, b) => a.from - b.from);
}

/** Each level takes a bracket, a mark or a column of indentation. */
function deepestPossible(text: string): number {
  const marks = text.match(/[[{]|[-?](?=\s)/g)?.length ?? 0;
  const columns = (text.match(/^ +/gm) ?? []).reduce((most, { length }) => Math.max(most, length), 0);
  return marks + columns + 1;
}

function* walk(tokens: readonly CST.Token[]): Generator<{ readonly token: Token; readonly depth: number }> {
  const open: { readonly token: Token; readonly depth: number }[] = tokens.map((token) => ({
    token,
    depth: 0,
  }));
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    yield next;
    const inner = 'items' in next.token && Array.isArray(next.token.items) ? next.depth + 1 : next.depth;
    for (const token of childrenOf(next.token)) open.push({ token, depth: inner });
  }
}

function childrenOf(token: Token): readonly Token[] {
  const parts = token as {
    readonly value?: CST.Token | null;
    readonly start?: Token | readonly Token[];
    readonly end?: readonly Token[];
    readonly props?: readonly Token[];
    readonly items?: readonly CST.CollectionItem[];
  };
  return [
    ...listed(parts.start),
    ...listed(parts.props),
    ...listed(parts.value),
    ...(parts.items ?? []).flatMap((item) => [
      ...listed(item.start),
      ...listed(item.key),
      ...listed(item.sep),
      ...listed(item.value),
    ]),
    ...listed(parts.end),
  ];
}

const listed = (part: Token | readonly Token[] | null | undefined): readonly Token[] =>
  part === null || part === undefined ? [] : Array.isArray(part) ? part : [part as Token];
