import { bareReading } from '../model/bare-reading.ts';
import type { Parameter } from '../model/procedure-facts.ts';
import type { Measure, Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import type { StandIns } from './read-declared.ts';

/** Parameters as what they can be named for: a reading with bands and no limits, a setting without a value but its usual
 *  one. They are replaced by what the caller gives. */
export const standIns = (parameters: readonly Parameter[]): StandIns => ({
  readings: parameters.flatMap((parameter) => (parameter.kind === 'reading' ? [readingFor(parameter)] : [])),
  settings: parameters.filter((parameter): parameter is Quantity => parameter.kind === 'quantity'),
});

type Quantity = Extract<Parameter, { readonly kind: 'quantity' }> & Setting;

function readingFor({ id, is, bands, unit }: Extract<Parameter, { readonly kind: 'reading' }>): Reading {
  return {
    id,
    is,
    ...bareReading,
    measure: unit === null ? asOptions(bands) : asQuantity(bands, unit),
    normal: 'any',
  };
}

const asOptions = (bands: readonly string[]): Measure => ({
  kind: 'options',
  options: bands.map((name) => ({ name, means: null })),
});

const asQuantity = (bands: readonly string[], unit: string): Measure => {
  const limits = bands.slice(1).map(() => ({ kind: 'name', name: '' }) as const);
  return {
    kind: 'quantity',
    unit,
    scale: { written: '', bands, limits, byMagnitude: false, nominal: null },
  };
};
