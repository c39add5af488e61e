import { type End, isEnd } from './fault-steps.ts';
import type { Node, Start } from './walked-graph.ts';

export const keyOfEnd = ({ how, section, held }: End): string => JSON.stringify([how, section, held]);

/** For each node the share of the walks from there that end in each way, by the key of the end. */
export interface WalkedEnds {
  readonly ends: ReadonlyMap<string, End>;
  readonly shares: ReadonlyMap<Node, ReadonlyMap<string, number>>;
}

/** Adds up where the walks end, depth first and without recursion: trees may be thousands of sections deep. A step back to a node
 *  that is still on the way down goes round for ever: a board answers the same whenever it is asked the same. */
export function walkedEnds(starts: readonly Start[]): WalkedEnds {
  const ends = new Map<string, End>();
  const shares = new Map<Node, ReadonlyMap<string, number>>();
  const onTheWay = new Set<Node>();
  for (const { node } of starts) {
    const way: { readonly node: Node; at: number }[] = [{ node, at: 0 }];
    for (let here = way.at(-1); here !== undefined; here = way.at(-1)) {
      onTheWay.add(here.node);
      const next = here.node.next[here.at];
      here.at += 1;
      if (next === undefined) {
        shares.set(here.node, summed(here.node, shares, ends));
        onTheWay.delete(here.node);
        way.pop();
      } else if (next !== null && !shares.has(next) && !onTheWay.has(next)) way.push({ node: next, at: 0 });
    }
  }
  return { ends, shares };
}

function summed(
  { steps, next }: Node,
  shares: ReadonlyMap<Node, ReadonlyMap<string, number>>,
  ends: Map<string, End>,
): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  const add = (key: string, share: number): void => {
    sums.set(key, (sums.get(key) ?? 0) + share);
  };
  for (const [at, { share, to }] of steps.entries()) {
    const node = next[at];
    const behind = node == null ? undefined : shares.get(node);
    if (behind !== undefined) for (const [key, part] of behind) add(key, share * part);
    else {
      const end: End = isEnd(to) ? to : { how: 'round', section: to.section, held: null };
      const key = keyOfEnd(end);
      ends.set(key, end);
      add(key, share);
    }
  }
  return sums;
}
