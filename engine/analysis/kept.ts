/** The value kept under a key; made where there is none yet. */
export function kept<Value>(cache: Map<string, Value>, key: string, make: () => Value): Value {
  const before = cache.get(key);
  if (before !== undefined) return before;
  const made = make();
  cache.set(key, made);
  return made;
}
