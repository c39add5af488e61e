import type Fraction from 'fraction.js';
import { checkFormula, placed, spanOfFormula } from '../formula/index.ts';
import type { Formula } from '../model/formula.ts';
import type { Parsed, TextProblem } from '../model/text-problem.ts';
import {
  exactOf,
  fractionOf,
  fromBase,
  printNumber,
  printQuantity,
  storedUnit,
  toStored,
} from '../quantity/index.ts';
import { lacksUnit, parseLimit } from './parse-limit.ts';

/** The two limits around a nominal, low end first.
 *  @param text what stands behind the `±`, at `at` of the whole */
export function withTolerance(
  nominal: Formula,
  text: string,
  at: number,
  unit: string,
  negative: boolean,
): Parsed<readonly [Formula, Formula]> {
  const parsed = parseLimit(text, at, '');
  if (!parsed.ok) return parsed;
  const tolerance = parsed.value;
  const place = spanOfFormula(tolerance);
  const written = text.trim();
  if (lacksUnit(tolerance, unit)) {
    return fail({ ...place, code: 'not-a-quantity', text: written, near: `${written} %` });
  }
  if (tolerance.kind === 'quantity' && (tolerance.unit === '%' || tolerance.unit === 'ppm')) {
    return relative(nominal, fractionOf(tolerance.value), unit, negative, place);
  }
  return absolute(nominal, asDifference(tolerance));
}

type Place = { readonly from: number; readonly to: number };

function relative(
  nominal: Formula,
  share: Fraction,
  unit: string,
  negative: boolean,
  place: Place,
): Parsed<readonly [Formula, Formula]> {
  const { row } = storedUnit(unit);
  const what = row.family === '' && unit !== '' ? 'percent' : row.family === '°C' ? 'temperature' : null;
  if (what !== null) {
    return fail({ ...place, code: 'tolerance-of', what, instead: spelledOut(nominal, share, what) });
  }
  if (nominal.kind === 'quantity' && nominal.value === '0') {
    return fail({ ...place, code: 'tolerance-of', what: 'zero', instead: null });
  }
  const less = times(nominal, fractionOf('1').sub(share));
  const more = times(nominal, share.add(1));
  return { ok: true, value: negative ? [more, less] : [less, more] };
}

/** `50 % ± 5 %` most likely means `45 % .. 55 %`; `40 °C ± 5 %` can only mean 5 % of the number. */
function spelledOut(nominal: Formula, share: Fraction, what: 'percent' | 'temperature'): string | null {
  if (nominal.kind !== 'quantity') return null;
  const value = fractionOf(nominal.value);
  if (what === 'percent') {
    return `${printQuantity(toStored(value.sub(share), nominal.unit))} .. ${printQuantity(toStored(value.add(share), nominal.unit))}`;
  }
  const number = fromBase(storedUnit(nominal.unit), value);
  const by = number.abs().mul(share);
  return `${printNumber(number.sub(by))} ${nominal.unit} .. ${printNumber(number.add(by))} ${nominal.unit}`;
}

function absolute(nominal: Formula, tolerance: Formula): Parsed<readonly [Formula, Formula]> {
  const limits = [sum(nominal, '-', tolerance), sum(nominal, '+', tolerance)] as const;
  if (nominal.kind !== 'quantity' || tolerance.kind !== 'quantity') return { ok: true, value: limits };
  const units = checkFormula(limits[0], new Map());
  if (!units.ok) return units;
  const value = fractionOf(nominal.value);
  const by = fractionOf(tolerance.value);
  return { ok: true, value: [literal(nominal, value.sub(by)), literal(nominal, value.add(by))] };
}

/** A tolerance of 9 °F is 5 °C, not the temperature 9 °F. */
function asDifference(tolerance: Formula): Formula {
  if (tolerance.kind !== 'quantity') return tolerance;
  const { offset } = storedUnit(tolerance.unit);
  const { from, to } = spanOfFormula(tolerance);
  return placed({ ...tolerance, value: exactOf(fractionOf(tolerance.value).sub(offset)) }, from, to);
}

function times(nominal: Formula, factor: Fraction): Formula {
  if (nominal.kind === 'quantity') return literal(nominal, fractionOf(nominal.value).mul(factor));
  const right: Formula = { kind: 'quantity', value: exactOf(factor), unit: '' };
  return like(nominal, { kind: 'binary', operator: '*', left: nominal, right });
}

const sum = (nominal: Formula, operator: '+' | '-', tolerance: Formula): Formula =>
  placed(
    { kind: 'binary', operator, left: nominal, right: tolerance },
    spanOfFormula(nominal).from,
    spanOfFormula(tolerance).to,
  );

const literal = (nominal: Extract<Formula, { kind: 'quantity' }>, value: Fraction): Formula =>
  like(nominal, { kind: 'quantity', value: exactOf(value), unit: nominal.unit });

function like(origin: Formula, made: Formula): Formula {
  const { from, to } = spanOfFormula(origin);
  return placed(made, from, to);
}

const fail = (problem: TextProblem): Parsed<never> => ({ ok: false, problems: [problem] });
