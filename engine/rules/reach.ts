/** Everything that can be reached from `starts` along `ways`, the starts included. */
export function reach(
  starts: Iterable<string>,
  ways: ReadonlyMap<string, readonly string[]>,
): ReadonlySet<string> {
  const reached = new Set(starts);
  for (const id of reached) for (const next of ways.get(id) ?? []) reached.add(next);
  return reached;
}

/** The same ways, walked backwards. */
export function reversed(
  ways: ReadonlyMap<string, readonly string[]>,
): ReadonlyMap<string, readonly string[]> {
  const back = new Map<string, string[]>();
  for (const [from, targets] of ways) {
    for (const target of targets) {
      const list = back.get(target);
      if (list) list.push(from);
      else back.set(target, [from]);
    }
  }
  return back;
}
