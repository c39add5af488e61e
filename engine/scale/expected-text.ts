import type { Measure, Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { printQuantity } from '../quantity/index.ts';
import { normalBandsOf } from './bands-of.ts';
import { resolveScale, type SettingValues } from './resolve-scale.ts';

/** What a healthy board shows: `39.6 MHz .. 40.4 MHz`, `at least 4 V`, `steady or noisy`, `done (FF)`.
 *  Empty where nothing is judged. */
export function expectedText(reading: Reading, settings: SettingValues): string {
  const { measure } = reading;
  const normal = normalBandsOf(reading);
  if (measure.kind === 'codes') return normal.map((band) => withCodes(measure, band)).join(' or ');
  if (measure.kind === 'options') return normal.join(' or ');
  const resolved = resolveScale(reading, settings);
  if (resolved.contradiction !== null) return resolved.contradiction;
  return runs(resolved.bands, normal)
    .map((run) => rangeText(resolved, run))
    .join(' or ');
}

interface Run {
  readonly first: number;
  readonly last: number;
}

/** Neighbouring normal bands read as one range. */
function runs(bands: readonly string[], normal: readonly string[]): readonly Run[] {
  const found: Run[] = [];
  for (const [at, band] of bands.entries()) {
    if (!normal.includes(band)) continue;
    const run = found.at(-1);
    if (run?.last === at - 1) found[found.length - 1] = { first: run.first, last: at };
    else found.push({ first: at, last: at });
  }
  return found;
}

function rangeText({ bands, limits, missing }: ResolvedScale, { first, last }: Run): string {
  const low = first === 0 ? undefined : limits[first - 1];
  const high = last === bands.length - 1 ? undefined : limits[last];
  if (low === null || high === null) return `depends on ${missing.join(', ')}`;
  if (low && high) return `${printQuantity(low)} .. ${printQuantity(high)}`;
  if (low) return `at least ${printQuantity(low)}`;
  return high ? `at most ${printQuantity(high)}` : 'any value';
}

function withCodes({ ranges }: Extract<Measure, { kind: 'codes' }>, band: string): string {
  const codes = ranges
    .filter((range) => range.band === band)
    .map(({ from, to }) => (from === to ? from : `${from}..${to}`));
  return codes.length === 0 || codes.includes(band) ? band : `${band} (${codes.join(', ')})`;
}
