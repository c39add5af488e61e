/** A set of combinations of bands: every name may be in any of its bands, independently.
 *
 *      { v5: [low, none], pg: [good] }   =   v5 low or none, and pg good
 *
 *  A name that a box does not mention may be in any band. */
export type Box = Readonly<Record<string, readonly string[]>>;

/** The part of `box` that also lies in `other`, or null where they have nothing in common. */
export function intersect(box: Box, other: Box): Box | null {
  const shared: Record<string, readonly string[]> = { ...box };
  for (const name of Object.keys(other)) {
    const allowed = other[name] ?? [];
    const bands = shared[name]?.filter((band) => allowed.includes(band)) ?? allowed;
    if (bands.length === 0) return null;
    shared[name] = bands;
  }
  return shared;
}

/** What is left of `box` without `cut`, as boxes that do not overlap. Names that `cut` mentions
 *  must be mentioned by `box`. */
export function subtract(box: Box, cut: Box): Box[] {
  if (intersect(box, cut) === null) return [box];
  const left: Box[] = [];
  let rest = box;
  for (const name of Object.keys(cut)) {
    const allowed = cut[name] ?? [];
    const bands = rest[name] ?? [];
    const outside = bands.filter((band) => !allowed.includes(band));
    if (outside.length === 0) continue;
    left.push({ ...rest, [name]: outside });
    rest = { ...rest, [name]: bands.filter((band) => allowed.includes(band)) };
  }
  return left;
}
