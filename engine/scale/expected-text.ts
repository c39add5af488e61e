import type { Present } from '../model/present.ts';
import type { Measure, Reading } from '../model/reading.ts';
import { normalBandsOf } from './bands-of.ts';
import { beepText } from './beep-text.ts';
import { memberReading } from './member-reading.ts';
import { rangesText } from './ranges-text.ts';
import { resolveScale } from './resolve-scale.ts';

type Texts = {
  readonly [Kind in Measure['kind']]: (
    measure: Extract<Measure, { kind: Kind }>,
    reading: Reading,
    present: Present,
  ) => string;
};

const texts: Texts = {
  quantity: (_, reading, present) => {
    const resolved = resolveScale(reading, present);
    return resolved.contradiction ?? rangesText(resolved, normalBandsOf(reading));
  },
  options: (_, reading) => normalBandsOf(reading).join(' or '),
  codes: ({ ranges }, reading) =>
    withRows(
      reading,
      ranges.map(({ from, to, band }) => ({ text: from === to ? from : `${from}..${to}`, band })),
    ),
  beeps: ({ patterns }, reading) =>
    withRows(
      reading,
      patterns.map(({ pattern, band }) => ({ text: beepText(pattern), band })),
    ),
  tries: ({ enough }, reading) => {
    const counts: Readonly<Record<string, string>> = {
      never: `never (0 of ${enough})`,
      always: `always (${enough} of ${enough})`,
    };
    return normalBandsOf(reading)
      .map((band) => counts[band] ?? band)
      .join(' or ');
  },
  each: (_, reading, present) => {
    const one = expectedText(memberReading(reading), present);
    return one === '' ? '' : `all ${one}`;
  },
};

/** What a healthy board shows: `39.6 MHz .. 40.4 MHz`, `at least 4 V`, `steady or noisy`, `done (FF)`, `all moves`.
 *  Empty where nothing is judged. */
export function expectedText(reading: Reading, present: Present): string {
  return texts[reading.measure.kind](reading.measure as never, reading, present);
}

/** Normal bands with the codes or patterns that are in them. */
function withRows(
  reading: Reading,
  rows: readonly { readonly text: string; readonly band: string }[],
): string {
  return normalBandsOf(reading)
    .map((band) => {
      const own = rows.filter((row) => row.band === band).map(({ text }) => text);
      return own.length === 0 || own.includes(band) ? band : `${band} (${own.join(', ')})`;
    })
    .join(' or ');
}
