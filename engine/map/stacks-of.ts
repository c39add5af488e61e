import type { Point } from './laid-out-map.ts';
import type { MapChart } from './map-graph.ts';
import { sizeNode } from './size-node.ts';

/** Symbols that stand right below each other and are placed as one. */
export interface Stack {
  readonly width: number;
  readonly height: number;
  /** Where each stands, from the upper left corner of the whole. */
  readonly members: readonly (Point & { readonly id: string })[];
}

/** The line between two of them. */
const stem = { plain: 12, arrow: 18 };

export function stacksOf({ nodes, edges }: MapChart): readonly Stack[] {
  const close = edges.filter((edge) => edge.close);
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const lower = new Set(close.map(({ to }) => to));
  return nodes
    .filter(({ id }) => !lower.has(id))
    .map((upper) => {
      const { width, height } = sizeNode(upper);
      const line = close.find(({ from }) => from === upper.id);
      const below = line && byId.get(line.to);
      if (line === undefined || below === undefined)
        return { width, height, members: [{ id: upper.id, x: 0, y: 0 }] };
      const size = sizeNode(below);
      const whole = Math.max(width, size.width);
      const top = height + (line.arrow ? stem.arrow : stem.plain);
      return {
        width: whole,
        height: top + size.height,
        members: [
          { id: upper.id, x: (whole - width) / 2, y: 0 },
          { id: below.id, x: (whole - size.width) / 2, y: top },
        ],
      };
    });
}
