import type { Reading } from '../model/reading.ts';
import type { FactsContext } from './facts-context.ts';
import { findCircles } from './find-circles.ts';
import { findReading, type Readings } from './find-reading.ts';
import { isTable, type RawTable, textOf } from './raw.ts';

/** The readings of a file in an order in which each comes after the one it is like. */
export interface LikeOrder {
  readonly ids: readonly string[];
  /** What a reading is like, by its id. */
  readonly likes: ReadonlyMap<string, string>;
}

/** @param ids in the order of the file */
export function likeOrder(
  table: RawTable,
  ids: readonly string[],
  foreign: ReadonlyMap<string, Reading>,
  context: FactsContext,
): LikeOrder {
  const named = new Set([...foreign.keys(), ...ids]);
  const likes = new Map<string, string>();
  for (const id of ids) {
    const raw = table[id];
    const name = isTable(raw) ? textOf(raw.like) : null;
    if (name === null) continue;
    if (named.has(name)) likes.set(id, name);
    else findReading(name, namesOnly(named), ['readings', id, 'like'], 'value', context);
  }
  const own = new Set(ids);
  const arcs = new Map(ids.map((id) => [id, [likes.get(id) ?? ''].filter((name) => own.has(name))]));
  for (const names of findCircles(arcs)) {
    context.atKey(['readings', names[0] ?? '', 'like'], { code: 'circle', key: 'like', names });
    for (const name of names) likes.delete(name);
  }
  return { ids: inOrder(ids, likes), likes };
}

/** To tell near misses, names are enough. */
const namesOnly = (names: ReadonlySet<string>): Readings =>
  new Map([...names].map((name) => [name, { id: name } as Reading]));

function inOrder(ids: readonly string[], likes: ReadonlyMap<string, string>): readonly string[] {
  const own = new Set(ids);
  const order = new Set<string>();
  for (const id of ids) {
    const chain: string[] = [];
    for (let next: string | undefined = id; next !== undefined && own.has(next) && !order.has(next); ) {
      chain.push(next);
      next = likes.get(next);
    }
    for (const each of chain.reverse()) order.add(each);
  }
  return [...order];
}
