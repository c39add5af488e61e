import { checkFormula, dimensionOf, fits } from '../formula/index.ts';
import type { Formula } from '../model/formula.ts';
import type { Measure, SingleMeasure } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';

type Fitted<T> =
  | { readonly ok: true; readonly measure: T }
  /** What keeps the sheet's limits from being used, as a clause: `it is in V here and in MHz on the sheet`. */
  | { readonly ok: false; readonly why: string };

/** A reading's measure with the limits of a board sheet. Its bands, and their order, stay as they are. */
export function fitMeasure(own: Measure, other: Measure, settings: readonly Setting[]): Fitted<Measure> {
  if (own.kind === 'each') {
    const fitted = fitMeasure(own.of, other.kind === 'each' ? other.of : other, settings);
    return fitted.ok ? { ok: true, measure: { ...own, of: fitted.measure as SingleMeasure } } : fitted;
  }
  if (own.kind === 'tries' || own.kind === 'options')
    return refuse('it has no limits that a board could move');
  if (own.kind !== other.kind) return refuse(`it is a ${words[own.kind]} here and not on the sheet`);
  return fitters[own.kind](own as never, other as never, settings);
}

const words = { quantity: 'quantity', codes: 'code', beeps: 'beep pattern' } as const;

type Kind = keyof typeof words;
type Of<K extends Kind> = Extract<SingleMeasure, { readonly kind: K }>;

const fitters: {
  readonly [K in Kind]: (own: Of<K>, other: Of<K>, settings: readonly Setting[]) => Fitted<Of<K>>;
} = {
  quantity: (own, other, settings) => {
    if (!fits(dimensionOf(own.unit), dimensionOf(other.unit)))
      return refuse(`it is in ${own.unit} here and in ${other.unit} on the sheet`);
    if (own.scale.bands.join() !== other.scale.bands.join()) return refuse(otherBands);
    const wrong = other.scale.limits.find((limit) => !isSound(limit, own.unit, settings));
    if (wrong !== undefined)
      return refuse(`"${other.scale.written}" speaks of settings that this tree does not have`);
    return { ok: true, measure: { ...own, scale: other.scale } };
  },
  codes: (own, other) =>
    isWithin(other.bands, own.bands)
      ? { ok: true, measure: { ...other, bands: own.bands } }
      : refuse(otherBands),
  beeps: (own, other) =>
    isWithin(other.bands, own.bands)
      ? { ok: true, measure: { ...other, bands: own.bands } }
      : refuse(otherBands),
};

const otherBands = 'its bands are others on the sheet';

const refuse = (why: string) => ({ ok: false, why }) as const;

const isWithin = (bands: readonly string[], all: readonly string[]): boolean =>
  bands.every((band) => all.includes(band));

/** Whether a limit can be worked out with this tree's settings, and is in the reading's unit. */
function isSound(limit: Formula, unit: string, settings: readonly Setting[]): boolean {
  const dimensions = new Map([
    ['twin', dimensionOf(unit)],
    ...settings.map(
      (setting) => [setting.id, setting.kind === 'quantity' ? dimensionOf(setting.unit) : null] as const,
    ),
  ]);
  const found = checkFormula(limit, dimensions);
  return found.ok && fits(dimensionOf(unit), found.value);
}
