import type { Path } from '../../model/front-matter.ts';
import type { Span } from '../../model/span.ts';
import type { FactNode, FactPair, TableNode } from './fact-node.ts';

/** Where the key or value at `path` stands; the nearest ancestor's key or value if there is none. */
export function placeOf(root: FactNode, path: Path, part: 'key' | 'value'): Span {
  let place = { key: spanOf(root), value: spanOf(root) };
  let node = root;
  for (const step of path) {
    if (node.kind === 'table') {
      const pair = pairOf(node, step);
      if (pair === undefined) break;
      place = { key: spanOf(pair), value: spanOf(pair.value) };
      node = pair.value;
    } else {
      const item = node.kind === 'list' ? node.items[Number(step)] : undefined;
      if (item === undefined) break;
      place = { key: spanOf(item), value: spanOf(item) };
      node = item;
    }
  }
  return place[part];
}

const indexes = new WeakMap<TableNode, ReadonlyMap<string | number, FactPair>>();

function pairOf(table: TableNode, key: string | number): FactPair | undefined {
  const index = indexes.get(table) ?? new Map(table.pairs.map((pair) => [pair.key, pair]));
  indexes.set(table, index);
  return index.get(key);
}

const spanOf = ({ from, to }: Span): Span => ({ from, to });
