/** Walks that come back to where they began: `[a, b, a]`. One for each place that a walk in the order of
 *  the keys comes back to; every circle of the graph goes through one of them. */
export function findCircles(arcs: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const circles: (readonly string[])[] = [];
  const done = new Set<string>();
  for (const start of arcs.keys()) {
    const path: string[] = [];
    const onPath = new Set<string>();
    const waiting: { readonly name: string; readonly leaves: boolean }[] = [{ name: start, leaves: false }];
    for (let step = waiting.pop(); step !== undefined; step = waiting.pop()) {
      const { name, leaves } = step;
      if (leaves) {
        path.pop();
        onPath.delete(name);
        done.add(name);
      } else if (onPath.has(name)) {
        circles.push([...path.slice(path.indexOf(name)), name]);
      } else if (!done.has(name)) {
        path.push(name);
        onPath.add(name);
        waiting.push({ name, leaves: true });
        for (const next of arcs.get(name) ?? []) waiting.push({ name: next, leaves: false });
      }
    }
  }
  return circles;
}
