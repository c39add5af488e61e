import type { Present } from '../../../engine/model/present.ts';
import type { Measure, Reading } from '../../../engine/model/reading.ts';
import type { Setting } from '../../../engine/model/setting.ts';
import { readWritten } from '../../../engine/quantity/index.ts';
import { observe, parseExpect, parseScale } from '../../../engine/scale/index.ts';
import { plainReading } from '../../helpers/plain-reading.ts';

/** A reading with nothing but its measure. */
export const readingOf = (measure: Measure, normal: Reading['normal']): Reading => ({
  ...plainReading('r', measure, normal),
  is: 'A reading',
});

export function taken<T>(given: { readonly ok: true; readonly value: T } | { readonly ok: false }): T {
  if (!given.ok) throw new Error(`Expected a value and found ${JSON.stringify(given)}`);
  return given.value;
}

/** A reading as an author writes it: `expecting('5 V ± 5 %', 'V')`. */
export const expecting = (expect: string, unit: string): Reading =>
  readingOf({ kind: 'quantity', unit, scale: taken(parseExpect(expect, unit)) }, ['good']);

export const scaled = (scale: string, unit: string, ...normal: readonly string[]): Reading =>
  readingOf({ kind: 'quantity', unit, scale: taken(parseScale(scale, unit)) }, normal);

/** `settingsOf({ fsb: '66 MHz', cpu: null })`, units written out. */
export const settingsOf = (values: Readonly<Record<string, string | null>>): Present => ({
  settings: new Map(
    Object.entries(values).map(([id, text]) => [id, text === null ? null : taken(readWritten(text, null))]),
  ),
  twins: new Map(),
});

export const quantitySetting = (id: string, unit: string, usual: string | null): Setting => ({
  kind: 'quantity',
  id,
  is: `What ${id} is`,
  unit,
  usual: usual === null ? null : taken(readWritten(usual, null)),
});

/** The bands a typed value is judged to be in, joined by `|`. */
export const verdict = (reading: Reading, typed: string, settings = settingsOf({})): string =>
  taken(observe(reading, settings, typed)).bands.join('|');
