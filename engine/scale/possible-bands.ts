import { type Bounds, boundsOf, exactly, noValue } from '../formula/index.ts';
import type { Present } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import { fromStored } from '../quantity/index.ts';
import { bandEnds } from './band-ends.ts';
import { bandsOf } from './bands-of.ts';
import { derivedBands, yesOrNo } from './derived-bands.ts';
import { resolveScale } from './resolve-scale.ts';
import { inputsOf } from './settings-of.ts';

/** A reading of which only its bands are known. */
export interface InputBands {
  readonly reading: Reading;
  readonly bands: readonly string[];
}

/** Beyond so many combinations of bands, each input counts as the range from its lowest band to its highest. */
const mostCombinations = 4096;

/** The bands of a derived reading that are possible, in its order, where its inputs are known by their bands only.
 *  Sound: no band is left out that values in those bands can lead to.
 *  @param inputs one row for each input that is taken; one that is missing, or has no band, shows nothing */
export function possibleBands(
  reading: Reading,
  inputs: readonly InputBands[],
  present: Present,
): readonly string[] {
  const { from } = reading;
  const all = bandsOf(reading);
  if (from === null) return all;
  const resolved = resolveScale(reading, present);
  const names = inputsOf(reading);
  const rows = inputs.filter((input) => names.includes(input.reading.id) && input.bands.length > 0);
  const choices = rows.map((row) => row.bands.map((band) => bandBounds(row.reading, [band], present)));
  const many = choices.reduce((product, { length }) => product * length, 1) > mostCombinations;
  const ranges = many ? rows.map((row) => [bandBounds(row.reading, row.bands, present)]) : choices;
  const found = new Set<string>();
  for (const combination of combinationsOf(ranges)) {
    const known = new Map(rows.map((row, at) => [row.reading.id, combination[at] ?? noValue]));
    const bounds = boundsOf(from, (name) => known.get(name) ?? settingBounds(name, present));
    const bands = reading.measure.kind === 'options' ? yesOrNo(bounds) : derivedBands(bounds, resolved);
    for (const band of bands) found.add(band);
    if (found.size === all.length) break;
  }
  return all.filter((band) => found.has(band));
}

function settingBounds(name: string, { settings }: Present): Bounds {
  const value = settings.get(name);
  return value === undefined || value === null || typeof value === 'string'
    ? noValue
    : exactly(fromStored(value));
}

/** From the lowest of the bands to the highest. */
function bandBounds(reading: Reading, bands: readonly string[], present: Present): Bounds {
  const resolved = resolveScale(reading, present);
  if (resolved.limits.length === 0) return noValue;
  const inOrder = resolved.bands.filter((band) => bands.includes(band));
  const { low } = bandEnds(resolved, inOrder[0] ?? '');
  const { high } = bandEnds(resolved, inOrder.at(-1) ?? '');
  const dark = bands.includes('none') ? (bands.length === 1 ? 'yes' : 'perhaps') : 'no';
  return { low, high, value: 'sure', dark };
}

function* combinationsOf<T>(choices: readonly (readonly T[])[]): Generator<readonly T[]> {
  const [first, ...others] = choices;
  if (first === undefined) {
    yield [];
    return;
  }
  for (const one of first) for (const rest of combinationsOf(others)) yield [one, ...rest];
}
