import { type Ground, silent, soft } from './ground.ts';

/** What a column can tell of the rows of a state. */
export interface Told {
  readonly minutes: number;
  /** Bits if it is taken at once: the information that its bands hold of the row. */
  readonly bits: number;
  /** Bits for each time it is taken, at the most. */
  readonly capacity: number;
  /** How likely each band is, least first; without rows that say nothing. */
  readonly masses: Float64Array;
}

export function toldBy(
  ground: Ground,
  rows: Int16Array,
  shares: Float64Array,
  column: number,
  minutes: number,
): Told {
  const { columns, band } = ground;
  const masses = new Float64Array(ground.bands[column] as number);
  let known = 0;
  let doubt = 0;
  for (let at = 0; at < rows.length; at += 1) {
    const place = (rows[at] as number) * columns + column;
    const here = band[place] as number;
    const share = shares[at] as number;
    if (here === silent) continue;
    known += share;
    if (here !== soft) {
      masses[here] = (masses[here] as number) + share;
      continue;
    }
    const cell = ground.shares[place] as Float64Array;
    for (let each = 0; each < masses.length; each += 1) {
      const part = cell[each] as number;
      if (part === 0) continue;
      masses[each] = (masses[each] as number) + share * part;
      doubt -= share * part * Math.log2(part);
    }
  }
  let bits = -doubt;
  for (const mass of masses) if (mass > 0) bits -= mass * Math.log2(mass / known);
  return {
    minutes,
    bits: Math.max(0, bits),
    capacity: ground.capacity[column] as number,
    masses: masses.filter((mass) => mass > 0).sort(),
  };
}
