import Fraction from 'fraction.js';
import type { StoredQuantity } from '../model/exact.ts';
import type { InstrumentRange } from '../model/instrument.ts';
import type { Taken } from '../model/refusal.ts';
import { baseUnit, exactOf, fromStored, readWritten, tidy } from '../quantity/index.ts';

const shape = /^(.+?) ?(?:±|\+\/-|\+-) ?(.+?)(?: ?(?:\bat\b|@) ?(.+))?$/i;

/** One range: `6 V ± (0.5 % + 2) at 1 mV`, `10 V ± (0.0020 % + 0.0005 % of range)`, `100 MHz ± 25 ppm`. */
export function parseRange(text: string): Taken<InstrumentRange> {
  const line = tidy(text);
  const [, range, accuracy, last] = shape.exec(line) ?? [];
  if (range === undefined || accuracy === undefined) {
    return refuse(`"${shown(line)}" is not a range: write its greatest value, ±, and how far it can be off`, [
      '6 V ± (0.5 % + 2) at 1 mV',
    ]);
  }
  const upTo = quantity(range);
  if (!upTo.ok) return upTo;
  const unit = baseUnit(upTo.value.unit);
  if (fromStored(upTo.value).compare(0) <= 0 || unit === '') {
    return refuse(
      `"${shown(range)}" is not the greatest value of a range: give a value above zero with its unit`,
      [],
    );
  }
  const terms = parseTerms(accuracy, unit);
  if (!terms.ok) return terms;
  const { ofReading, ofRange, digits, fixed } = terms.value;
  const step = last === undefined ? null : quantity(last);
  if (step !== null && !step.ok) return step;
  if (step !== null && (baseUnit(step.value.unit) !== unit || fromStored(step.value).compare(0) <= 0)) {
    return refuse(`"${shown(last ?? '')}" is not what a digit of this range can be worth`, [
      `${range} ± ${accuracy} at 1 ${unit}`,
    ]);
  }
  if (digits > 0 && step === null) {
    return refuse(`"${shown(line)}" counts digits and does not say what the last one is worth`, [
      `${line} at 1 ${unit}`,
    ]);
  }
  if (fixed !== null && step !== null) {
    return refuse(`"${shown(line)}" gives an amount and a last digit: one of them is kept`, []);
  }
  const resolution = fixed ?? (step === null ? null : step.value);
  return {
    ok: true,
    value: {
      unit,
      upTo: exactOf(fromStored(upTo.value)),
      ofReading: exactOf(ofReading),
      ofRange: exactOf(ofRange),
      digits: fixed === null ? digits : 1,
      resolution: resolution === null ? '0' : exactOf(fromStored(resolution)),
    },
  };
}

interface Terms {
  readonly ofReading: Fraction;
  readonly ofRange: Fraction;
  readonly digits: number;
  /** An amount in the range's own unit: `+ 3 mV`. */
  readonly fixed: StoredQuantity | null;
}

const brackets = /^[([]\s*(.*?)\s*[)\]]$/;
const share = /^(.+? ?(?:%|ppm)) ?(?:of )?(?:(reading|rdg|value)|(range|rng|full scale|fs))?$/i;
const count = /^(\d{1,5}) ?(?:digits?|dgts?|counts?|d|lsd)?$/i;

function parseTerms(text: string, unit: string): Taken<Terms> {
  let terms: Terms = { ofReading: new Fraction(0), ofRange: new Fraction(0), digits: 0, fixed: null };
  const given = new Set<keyof Terms>();
  for (const part of text
    .replace(brackets, '$1')
    .split('+')
    .map((one) => one.trim())) {
    const term = parseTerm(part, unit);
    if (!term.ok) return term;
    const [key] = Object.keys(term.value) as (keyof Terms)[];
    if (key === undefined) continue;
    if (given.has(key)) return refuse(`"${shown(text)}" says the same part of the accuracy twice`, []);
    given.add(key);
    terms = { ...terms, ...term.value };
  }
  if (given.has('fixed') && given.has('digits')) {
    return refuse(`"${shown(text)}" gives an amount and digits: one of them is kept`, []);
  }
  return { ok: true, value: terms };
}

function parseTerm(text: string, unit: string): Taken<Partial<Terms>> {
  const digits = count.exec(text);
  if (digits) return { ok: true, value: { digits: Number(digits[1]) } };
  const [, amount, , ofRange] = share.exec(text) ?? [];
  const given = quantity(amount ?? text);
  if (!given.ok) return given;
  const value = fromStored(given.value);
  if (value.lt(0)) return refuse(`"${shown(text)}" is below zero`, []);
  if (amount !== undefined) {
    if (value.gt(1)) return refuse(`"${shown(text)}" is more than the whole value`, []);
    return { ok: true, value: ofRange === undefined ? { ofReading: value } : { ofRange: value } };
  }
  if (baseUnit(given.value.unit) === unit && unit !== '') return { ok: true, value: { fixed: given.value } };
  return refuse(
    `"${shown(text)}" is no part of an accuracy: write per cent of the reading, "% of range", or a count of digits`,
    [],
  );
}

/** A number with its unit, with a decimal point or comma. */
function quantity(text: string): Taken<StoredQuantity> {
  const read = readWritten(text.replace(/(\d),(?=\d)/, '$1.'), null);
  if (read.ok) return { ok: true, value: read.value };
  const [problem] = read.problems;
  const near =
    problem?.code === 'unknown-unit' && problem.near !== null ? `: did you mean "${problem.near}"?` : '';
  return refuse(`"${shown(text)}" is not a number with a unit${near}`, []);
}

const shown = (text: string): string => text.slice(0, 60);

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
