/** The way from `start` by way of `first` back to `start`, both ends included; null where there is none. */
export function cycleThrough(
  start: string,
  first: string,
  next: (path: string) => readonly string[],
): readonly string[] | null {
  const cameFrom = new Map<string, string>([[first, start]]);
  for (const path of cameFrom.keys()) {
    if (path === start) return wayBack(start, cameFrom);
    for (const to of next(path)) if (!cameFrom.has(to)) cameFrom.set(to, path);
  }
  return null;
}

function wayBack(start: string, cameFrom: ReadonlyMap<string, string>): readonly string[] {
  const way = [start];
  for (let at = cameFrom.get(start); at !== undefined && at !== start; at = cameFrom.get(at)) way.unshift(at);
  return [start, ...way];
}
