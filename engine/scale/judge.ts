import type Fraction from 'fraction.js';
import type { Understood } from '../model/observation.ts';
import type { Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { fractionOf, fromStored, storedUnit } from '../quantity/index.ts';
import { bandOfCode } from './band-of-code.ts';

type Judging<Kind extends Understood['kind']> = (
  understood: Extract<Understood, { kind: Kind }>,
  resolved: ResolvedScale,
  reading: Reading,
) => readonly string[];

const judges: { readonly [Kind in Understood['kind']]: Judging<Kind> } = {
  quantity: ({ quantity }, resolved) => {
    const value = fromStored(quantity);
    return between({ value, closed: true }, { value, closed: true }, resolved);
  },
  interval: ({ from, to, closed }, resolved) =>
    between(
      from === null ? null : { value: fractionOf(from), closed },
      to === null ? null : { value: fractionOf(to), closed },
      resolved,
    ),
  // Beyond the range of an ohmmeter is as good as open; of any other instrument it says nothing.
  overload: (_, { unit, bands }) => (storedUnit(unit).row.family === 'Ω' ? bands.slice(-1) : bands),
  option: ({ option }) => [option],
  code: ({ code }, _, { measure }) => (measure.kind === 'codes' ? [bandOfCode(measure, code)] : []),
};

/** The bands that an understood value can lie in, in the scale's order. One band for one value, unless a limit
 *  beside it is not known. */
export function judge(reading: Reading, resolved: ResolvedScale, understood: Understood): readonly string[] {
  return judges[understood.kind](understood as never, resolved, reading);
}

interface End {
  readonly value: Fraction;
  readonly closed: boolean;
}

/** Every band that holds a value from the low end to the high end; a missing end is open.
 *
 *      bands    dead  |  low  ?  good  |  high        ? is a limit that is not known
 *      value                ·                         → low, good
 */
function between(
  low: End | null,
  high: End | null,
  { bands, limits, owners, contradiction }: ResolvedScale,
): readonly string[] {
  if (contradiction !== null) return bands;
  let first = 0;
  let last = bands.length - 1;
  for (const [at, limit] of limits.entries()) {
    if (limit === null) continue;
    const value = fromStored(limit);
    // An open end begins just above its value, and ends just below it.
    if (low !== null && isAbove(low, value, owners[at], !low.closed)) first = at + 1;
    if (high !== null && !isAbove(high, value, owners[at], false)) last = Math.min(last, at);
  }
  return bands.slice(first, last + 1);
}

function isAbove(
  { value, closed }: End,
  limit: Fraction,
  owner: 'below' | 'above' | undefined,
  justAbove: boolean,
): boolean {
  const order = value.compare(limit);
  if (order !== 0) return order > 0;
  return closed ? owner === 'above' : justAbove;
}
