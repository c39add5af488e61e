import type { Understood } from '../model/observation.ts';
import type { Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { fractionOf, fromStored, storedUnit } from '../quantity/index.ts';
import { bandOfBeeps } from './band-of-beeps.ts';
import { bandOfCode } from './band-of-code.ts';
import { bandsBetween } from './bands-between.ts';
import { groupBands } from './group-bands.ts';
import { judgeTries } from './judge-tries.ts';

type Judging<Kind extends Understood['kind']> = (
  understood: Extract<Understood, { kind: Kind }>,
  resolved: ResolvedScale,
  reading: Reading,
) => readonly string[];

const judges: { readonly [Kind in Understood['kind']]: Judging<Kind> } = {
  quantity: ({ quantity }, resolved) => {
    const end = { value: fromStored(quantity), closed: true };
    return bandsBetween(end, end, resolved);
  },
  interval: ({ from, to, closed }, resolved) =>
    bandsBetween(
      from === null ? null : { value: fractionOf(from), closed },
      to === null ? null : { value: fractionOf(to), closed },
      resolved,
    ),
  // Beyond the range of an ohmmeter is as good as open; of any other instrument it says nothing.
  overload: (_, { unit, bands }) => (storedUnit(unit).row.family === 'Ω' ? bands.slice(-1) : bands),
  option: ({ option }) => [option],
  code: ({ code }, _, { measure }) => (measure.kind === 'codes' ? [bandOfCode(measure, code)] : []),
  beeps: ({ pattern }, _, { measure }) => (measure.kind === 'beeps' ? [bandOfBeeps(measure, pattern)] : []),
  tries: (counted, _, { measure }) => (measure.kind === 'tries' ? judgeTries(measure, counted) : []),
  each: ({ members }, _, reading) => groupBands(reading, members),
};

/** The bands that an understood value can lie in, in the scale's order. One band for one value, unless a limit
 *  beside it is not known. Of many alike, the members as they were judged decide. */
export function judge(reading: Reading, resolved: ResolvedScale, understood: Understood): readonly string[] {
  return judges[understood.kind](understood as never, resolved, reading);
}
