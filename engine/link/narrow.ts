/** Two clauses about one name must both hold; false where they leave it nothing. */
export function narrow(
  bands: Map<string, readonly string[]>,
  said: ReadonlyMap<string, readonly string[]>,
): boolean {
  let possible = true;
  for (const [name, allowed] of said) {
    const both = bands.get(name)?.filter((band) => allowed.includes(band)) ?? allowed;
    bands.set(name, both);
    possible &&= both.length > 0;
  }
  return possible;
}
