import type { Present } from '../model/present.ts';
import type { Measure, Reading } from '../model/reading.ts';
import { normalBandsOf } from './bands-of.ts';
import { rangesText } from './ranges-text.ts';
import { resolveScale } from './resolve-scale.ts';

/** What a healthy board shows: `39.6 MHz .. 40.4 MHz`, `at least 4 V`, `steady or noisy`, `done (FF)`.
 *  Empty where nothing is judged. */
export function expectedText(reading: Reading, present: Present): string {
  const { measure } = reading;
  const normal = normalBandsOf(reading);
  if (measure.kind === 'codes') return normal.map((band) => withCodes(measure, band)).join(' or ');
  if (measure.kind === 'options') return normal.join(' or ');
  const resolved = resolveScale(reading, present);
  if (resolved.contradiction !== null) return resolved.contradiction;
  return rangesText(resolved, normal);
}

function withCodes({ ranges }: Extract<Measure, { kind: 'codes' }>, band: string): string {
  const codes = ranges
    .filter((range) => range.band === band)
    .map(({ from, to }) => (from === to ? from : `${from}..${to}`));
  return codes.length === 0 || codes.includes(band) ? band : `${band} (${codes.join(', ')})`;
}
