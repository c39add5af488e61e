import { formulaText } from '../formula/formula-text.ts';
import { type Child, element } from '../markup/index.ts';
import type { Present } from '../model/present.ts';
import type { Measure, Reading } from '../model/reading.ts';
import { printQuantity } from '../quantity/index.ts';
import { beepText, memberReading, normalBandsOf, resolveScale } from '../scale/index.ts';

type Texts = {
  readonly [Kind in Measure['kind']]: (
    measure: Extract<Measure, { kind: Kind }>,
    reading: Reading,
    present: Present,
  ) => Child;
};

const texts: Texts = {
  quantity: ({ scale }, reading, present) => {
    const { bands, limits } = resolveScale(reading, present);
    const normal = normalBandsOf(reading);
    return bands.flatMap((band, at): readonly Child[] => {
      const [limit, formula] = [limits[at - 1], scale.limits[at - 1]];
      const between = limit ? printQuantity(limit) : formula === undefined ? '' : formulaText(formula);
      return [at === 0 ? '' : ` < ${between} < `, normal.includes(band) ? element('b', {}, band) : band];
    });
  },
  options: () => null,
  codes: ({ ranges }, reading) =>
    rowsText(
      reading,
      ranges.map(({ from, to, band, means }) => ({
        from: from === to ? from : `${from} to ${to}`,
        band,
        means,
      })),
    ),
  beeps: ({ patterns }, reading) =>
    rowsText(
      reading,
      patterns.map(({ pattern, band, means }) => ({ from: beepText(pattern), band, means })),
    ),
  tries: ({ enough }) => `never, sometimes or always; ${enough} in a row settle it`,
  each: (_measure, reading, present) => bandsText(memberReading(reading), present),
};

interface Row {
  readonly from: string;
  readonly band: string;
  readonly means: string | null;
}

/** Codes or patterns with what they mean, a line for each. */
const rowsText = (reading: Reading, rows: readonly Row[]): Child =>
  element(
    'span',
    { class: 'codes' },
    rows.map(({ from, band, means }) => {
      const said = means ?? band;
      const name = normalBandsOf(reading).includes(band) ? element('b', {}, band) : band;
      return element(
        'span',
        { class: 'code' },
        element('code', {}, from),
        ' ',
        name,
        said === band ? '' : `: ${said}`,
      );
    }),
  );

/** How what was read is called: the bands with the limits between them at the usual settings, those of a healthy board
 *  in bold; codes and patterns with their meanings. Null where the choices themselves are the bands. */
export const bandsText = (reading: Reading, present: Present): Child =>
  texts[reading.measure.kind](reading.measure as never, reading, present);
