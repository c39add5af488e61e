interface Member {
  readonly id: string;
  readonly derived: { readonly inputs: readonly string[] } | null;
}

/** Names that are computed from each other: what is known of one says something about the rest. */
export function familiesOf(names: readonly Member[]): ReadonlyMap<string, readonly string[]> {
  const family = new Map<string, Set<string>>(names.map(({ id }) => [id, new Set([id])]));
  for (const { id, derived } of names) {
    for (const input of derived?.inputs ?? []) {
      const [one, other] = [family.get(id), family.get(input)];
      if (one === undefined || other === undefined || one === other) continue;
      for (const member of other) {
        one.add(member);
        family.set(member, one);
      }
    }
  }
  return new Map([...family].map(([id, members]) => [id, [...members]]));
}
