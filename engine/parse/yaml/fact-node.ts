/** YAML as the facts need it: texts, lists and tables with their places. */
export type FactNode = TextNode | ListNode | TableNode;

export interface TextNode {
  readonly kind: 'text';
  readonly from: number;
  readonly to: number;
  readonly value: string;
}

export interface ListNode {
  readonly kind: 'list';
  readonly from: number;
  readonly to: number;
  readonly items: readonly FactNode[];
}

export interface TableNode {
  readonly kind: 'table';
  readonly from: number;
  readonly to: number;
  readonly pairs: readonly FactPair[];
}

/** `from` and `to` are the key's. */
export interface FactPair {
  readonly key: string;
  readonly from: number;
  readonly to: number;
  readonly value: FactNode;
}

/** The same node `by` characters further down. */
export function shifted(node: FactNode, by: (offset: number) => number): FactNode {
  const place = { from: by(node.from), to: by(node.to) };
  if (node.kind === 'text') return { ...node, ...place };
  if (node.kind === 'list') return { ...node, ...place, items: node.items.map((item) => shifted(item, by)) };
  return { ...node, ...place, pairs: node.pairs.map((pair) => shiftedPair(pair, by)) };
}

export const shiftedPair = (pair: FactPair, by: (offset: number) => number): FactPair => ({
  key: pair.key,
  from: by(pair.from),
  to: by(pair.to),
  value: shifted(pair.value, by),
});
