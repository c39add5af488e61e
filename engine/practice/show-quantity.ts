import Fraction from 'fraction.js';
import { rangesFor } from '../doubt/plus-minus-of.ts';
import type { Equipment } from '../model/instrument.ts';
import type { Present } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { baseUnit, fromStored, storedUnit, toStored } from '../quantity/index.ts';
import { bandEnds } from '../scale/band-ends.ts';
import { normalBandsOf, resolveScale, twinOf } from '../scale/index.ts';
import { asShown, stepOf } from './as-shown.ts';
import type { Dice } from './dice.ts';
import { sizeIn } from './size-in.ts';
import { usualInstruments } from './usual-instruments.ts';

/** What an ohmmeter shows that finds no way through. */
const overload = 'OL';

/** A value of a band, as the instrument shows it.
 *  @param again at which taking this is, from 0: the last digits change from one to the next
 *  @param fine shown with so many more digits than the instrument has, where the band is narrower than its last one */
export function showQuantity(
  reading: Reading,
  unit: string,
  band: string,
  { present, equipment }: { readonly present: Present; readonly equipment: Equipment },
  { dice, noise, fine }: { readonly dice: Dice; readonly noise: Dice | null; readonly fine: number },
): string {
  const resolved = resolveScale(reading, present);
  const { low, high } = bandEnds(resolved, band);
  const isDark = band === 'none';
  const isTop = band === resolved.bands.at(-1);
  if (isTop && isOpenCircuit(reading, unit, band) && dice.share() < 0.6) return overload;
  if (isDark && storedUnit(unit).row.family === 'Hz') return 'none';
  const room = {
    low: low?.value.valueOf() ?? null,
    high: high?.value.valueOf() ?? null,
    around: aroundIn(reading, resolved, band, present),
    dark: isDark,
  };
  const size = sizeIn(room, dice);
  const step = lastDigit(reading, size, unit, equipment);
  const off = noise === null || step === null ? 0 : (noise.share() * 4 - 2) * step;
  return asShown(size + off, unit, step === null ? null : step / 10 ** fine);
}

/** Far above what it should be, ohms mean that nothing is joined. */
const isOpenCircuit = (reading: Reading, unit: string, band: string): boolean =>
  storedUnit(unit).row.family === 'Ω' && !normalBandsOf(reading).includes(band) && reading.normal !== 'any';

/** What a known-good board shows, or should, where that lies in the band. */
function aroundIn(reading: Reading, resolved: ResolvedScale, band: string, present: Present): number | null {
  const { low, high } = bandEnds(resolved, band);
  for (const stored of [twinOf(reading, present)?.value ?? null, resolved.nominal]) {
    if (stored === null || baseUnit(stored.unit) !== baseUnit(resolved.unit)) continue;
    const value = fromStored(stored);
    if ((low === null || value.gt(low.value)) && (high === null || value.lt(high.value)))
      return value.valueOf();
  }
  return null;
}

/** By the trainee's own instruments that the reading asks for, else by a usual one. */
function lastDigit(reading: Reading, size: number, unit: string, { instruments }: Equipment): number | null {
  const value = toStored(new Fraction(size), baseUnit(unit));
  const own = instruments.filter(({ tool }) => reading.with.length === 0 || reading.with.includes(tool));
  for (const instrument of [...own, ...usualInstruments]) {
    const [range] = rangesFor(instrument, value);
    if (range !== undefined) return stepOf(range.resolution);
  }
  return null;
}
