type Bag = Readonly<Record<string, unknown>>;

export const isBag = (data: unknown): data is Bag =>
  typeof data === 'object' && data !== null && !Array.isArray(data);

/** `data` with the keys that it lacks; what it has stays as it is, and so does what is no object. */
export function fillMissing(data: unknown, defaults: Bag): unknown {
  if (!isBag(data)) return data;
  const missing = Object.entries(defaults).filter(([key]) => !Object.hasOwn(data, key));
  return missing.length === 0 ? data : { ...data, ...Object.fromEntries(missing) };
}

/** `data` with one of its values changed, where it has that value. */
export function withChanged(data: unknown, key: string, change: (value: unknown) => unknown): unknown {
  if (!isBag(data) || !Object.hasOwn(data, key)) return data;
  const value = change(data[key]);
  return value === data[key] ? data : { ...data, [key]: value };
}

/** A list with each of its items changed; the list itself where that changes none. */
export const eachOf =
  (change: (item: unknown) => unknown) =>
  (list: unknown): unknown => {
    if (!Array.isArray(list)) return list;
    const changed = list.map(change);
    return changed.every((item, index) => item === list[index]) ? list : changed;
  };
