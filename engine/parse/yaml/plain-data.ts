import type { FactNode } from './fact-node.ts';

/** The facts as null-prototype objects, arrays and strings. */
export function plainData(node: FactNode): unknown {
  if (node.kind === 'text') return node.value;
  if (node.kind === 'list') return node.items.map(plainData);
  const table: Record<string, unknown> = Object.create(null);
  for (const { key, value } of node.pairs) table[key] = plainData(value);
  return table;
}
