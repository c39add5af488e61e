import Fraction from 'fraction.js';
import type { Understood } from '../model/observation.ts';
import type { Taken } from '../model/refusal.ts';
import { nearest } from '../names/nearest.ts';
import { exactOf } from './exact.ts';
import { printNumber } from './print-number.ts';
import { scanNumber } from './scan-number.ts';
import { toStored } from './stored.ts';
import { typedUnit } from './typed-unit.ts';
import { toBase, type Unit } from './unit.ts';

/** A typed value without a word for how it behaves. */
export interface TypedValue {
  readonly understood: Extract<Understood, { readonly kind: 'quantity' | 'interval' | 'overload' }>;
  /** Typed as the word `none`: zero. */
  readonly none: boolean;
  /** What was assumed: `read as MHz`. */
  readonly remarks: readonly string[];
}

const overload = /^(?:[o0]\.? ?l\.?|open|overload|over[- ]?range)\s*(.*)$/i;
const range = /^(.+?)\s*(?:\.{2,3}|…)\s*(.+)$/s;
const halfRange = /^(?:(?:\.{2,3}|…)\s*(\S.*)|(.*\S)\s*(?:\.{2,3}|…))$/s;
const bound = /^(>=|=>|≥|<=|=<|≤|>|<)\s*(.*)$/s;

/** @param text tidied
 *  @param wanted the reading's unit */
export function readValue(text: string, wanted: Unit, allowNone: boolean): Taken<TypedValue> {
  if (text === '') return refuse('Nothing was typed', []);
  if (/^none$/i.test(text)) return readNone(wanted, allowNone);
  const over = overload.exec(text);
  if (over && typedUnit(over[1] ?? '', wanted).ok) return take({ kind: 'overload' }, []);
  const between = range.exec(text);
  if (between) return readRange(between[1] ?? '', between[2] ?? '', wanted);
  const half = halfRange.exec(text);
  if (half && /\d/.test(text)) return oneEnd(text, half[1], half[2]);
  const beyond = bound.exec(text);
  if (beyond) return readBound(beyond[1] ?? '', beyond[2] ?? '', wanted);
  const one = readOne(text, wanted);
  if (!one.ok) return one;
  const { base, unit, remarks } = one.value;
  return take({ kind: 'quantity', quantity: toStored(base, unit.text) }, remarks);
}

function readNone({ text, offset }: Unit, allowNone: boolean): Taken<TypedValue> {
  return allowNone
    ? {
        ok: true,
        value: {
          understood: { kind: 'quantity', quantity: toStored(offset, text) },
          none: true,
          remarks: [],
        },
      }
    : refuse('This reading has no band "none": type the value that is shown', [print('0', text)]);
}

interface One {
  readonly base: Fraction;
  readonly unit: Unit;
  readonly remarks: readonly string[];
}

/** @param lent the unit of the other end of a range, for an end that has none */
function readOne(text: string, wanted: Unit, lent = ''): Taken<One> {
  const scan = scanNumber(text);
  if (!scan.ok) {
    const meant = typedUnit(scan.unit || lent, wanted);
    const unit = meant.ok ? meant.unit : wanted;
    const words = /inf|∞/i.test(text) ? ['OL'] : nearest(text, ['overload', 'open', 'none']);
    return refuse(`"${text}" ${scan.why}`, [
      ...scan.instead.map((number) => print(number, unit.text)),
      ...words,
    ]);
  }
  const { value, number } = scan.value;
  const unit = typedUnit(scan.value.unit || lent, wanted);
  if (!unit.ok) {
    const scaled =
      unit.power === undefined ? number : printNumber(value.mul(new Fraction(10).pow(unit.power)));
    return refuse(
      unit.why,
      unit.units.map((offer) => print(scaled, offer)),
    );
  }
  const remarks = unit.remark === null ? [] : [unit.remark];
  return { ok: true, value: { base: toBase(unit.unit, value), unit: unit.unit, remarks } };
}

/** `48..52 MHz`: an end without a unit takes that of the other end. */
function readRange(left: string, right: string, wanted: Unit): Taken<TypedValue> {
  const to = readOne(right, wanted, unitTyped(left));
  if (!to.ok)
    return refuse(
      to.refusal.text,
      to.refusal.offers.map((offer) => `${left} .. ${offer}`),
    );
  const from = readOne(left, wanted, unitTyped(right));
  if (!from.ok)
    return refuse(
      from.refusal.text,
      from.refusal.offers.map((offer) => `${offer} .. ${right}`),
    );
  const [low, high] = [from.value.base, to.value.base].sort((a, b) => a.compare(b)).map(exactOf);
  const remarks = [...new Set([...from.value.remarks, ...to.value.remarks])];
  const unit = to.value.unit.text;
  return take({ kind: 'interval', from: low ?? null, to: high ?? null, closed: true, unit }, remarks);
}

/** `.. 5`, `5 ..` */
const oneEnd = (whole: string, to: string | undefined, from: string | undefined): Taken<never> =>
  refuse(`"${whole}" is a range with one end: type both, or a value that it is above or below`, [
    to === undefined ? `≥ ${from}` : `≤ ${to}`,
  ]);

function unitTyped(text: string): string {
  const scan = scanNumber(text);
  return scan.ok ? scan.value.unit : '';
}

/** `> 200k`, `<= 0.5 V`. */
function readBound(sign: string, text: string, wanted: Unit): Taken<TypedValue> {
  if (text === '') return refuse(`"${sign}" has no value behind it`, [`${sign} ${print('1', wanted.text)}`]);
  const one = readOne(text, wanted);
  if (!one.ok)
    return refuse(
      one.refusal.text,
      one.refusal.offers.map((offer) => `${sign} ${offer}`),
    );
  const { base, unit, remarks } = one.value;
  const end = exactOf(base);
  const up = /[>≥]/.test(sign);
  const closed = /[=≥≤]/.test(sign);
  return take(
    { kind: 'interval', from: up ? end : null, to: up ? null : end, closed, unit: unit.text },
    remarks,
  );
}

const take = (understood: TypedValue['understood'], remarks: readonly string[]): Taken<TypedValue> => ({
  ok: true,
  value: { understood, none: false, remarks },
});

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});

const print = (number: string, unit: string): string => `${number} ${unit}`.trim();
