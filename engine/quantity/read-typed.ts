import type Fraction from 'fraction.js';
import type { Mark, Understood } from '../model/observation.ts';
import type { Taken } from '../model/refusal.ts';
import { exactOf } from './exact.ts';
import { nearest } from './nearest.ts';
import { storedUnit } from './parse-unit.ts';
import { scanNumber } from './scan-number.ts';
import { splitMark } from './split-mark.ts';
import { toStored } from './stored.ts';
import { tidy } from './tidy.ts';
import { typedUnit } from './typed-unit.ts';
import { toBase, type Unit } from './unit.ts';

/** What a technician typed for a quantity, understood. */
export interface TypedQuantity {
  readonly understood: Exclude<Understood, { readonly kind: 'option' | 'code' }>;
  readonly mark: Mark | null;
  /** Typed as the word `none`: zero. */
  readonly none: boolean;
  /** What was assumed: `read as MHz`. */
  readonly remarks: readonly string[];
}

export interface TypedAs {
  /** The reading's unit: a bare number takes it, prefix and all. */
  readonly unit: string;
  /** Whether `none` is a value of this reading. */
  readonly allowNone: boolean;
}

const longest = 64;
const overload = /^(?:[o0]\.?l\.?|open|overload|over-?\s?range)\s*(.*)$/i;
const range = /^(.+?)\s*(?:\.{2,3}|…)\s*(.+)$/s;
const bound = /^(>=|=>|≥|<=|=<|≤|>|<)\s*(.*)$/s;

/** Reads what is typed at the bench. Total: every text is either taken or refused with a way out. */
export function readTyped(typed: string, { unit, allowNone }: TypedAs): Taken<TypedQuantity> {
  const wanted = storedUnit(unit);
  if (typed.length > longest) {
    return refuse(`This is ${typed.length} characters long, and a reading has at most ${longest}`, [
      example(wanted),
    ]);
  }
  const whole = tidy(typed);
  const { text, mark } = splitMark(whole);
  const taken = readValue(text, wanted, allowNone);
  if (mark === null) return taken;
  if (text === '') {
    return refuse(`"${whole}" says how a value behaves: type the value before it`, [
      `${example(wanted)} ${mark}`,
    ]);
  }
  const second = splitMark(text);
  if (second.mark !== null) {
    return refuse(`"${whole}" has two words for how the value behaves, and one is kept`, [
      `${second.text} ${second.mark}`,
      `${second.text} ${mark}`,
    ]);
  }
  return taken.ok
    ? { ok: true, value: { ...taken.value, mark } }
    : refuse(
        taken.refusal.text,
        taken.refusal.offers.map((offer) => `${offer} ${mark}`),
      );
}

function readValue(text: string, wanted: Unit, allowNone: boolean): Taken<TypedQuantity> {
  if (text === '') return refuse('Nothing was typed', [example(wanted)]);
  if (/^none$/i.test(text)) {
    return allowNone
      ? take({ kind: 'quantity', quantity: { value: '0', unit: wanted.text } }, [], true)
      : refuse('This reading has no band "none": type the value that is shown', [`0 ${wanted.text}`.trim()]);
  }
  const over = overload.exec(text);
  if (over && typedUnit(over[1] ?? '', wanted).ok) return take({ kind: 'overload' }, []);
  const between = range.exec(text);
  if (between) return readRange(between[1] ?? '', between[2] ?? '', wanted);
  const beyond = bound.exec(text);
  if (beyond) return readBound(beyond[1] ?? '', beyond[2] ?? '', wanted);
  const one = readOne(text, wanted);
  return one.ok
    ? take({ kind: 'quantity', quantity: toStored(one.value.base, one.value.unit.text) }, one.value.remarks)
    : one;
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
    const as = meant.ok ? meant.unit : wanted;
    const offers = scan.instead.map((number) => print(number, as.text));
    return refuse(
      `"${text}" ${scan.why}`,
      offers.length > 0
        ? offers
        : [...nearest(text, ['none', 'open', 'overload', 'OL']).slice(0, 0), example(wanted)],
    );
  }
  const { value, number } = scan.value;
  const unit = typedUnit(scan.value.unit || lent, wanted);
  if (!unit.ok)
    return refuse(
      unit.why,
      unit.units.map((offer) => print(number, offer)),
    );
  return {
    ok: true,
    value: {
      base: toBase(unit.unit, value),
      unit: unit.unit,
      remarks: unit.remark === null ? [] : [unit.remark],
    },
  };
}

/** `48..52 MHz`: an end without a unit takes that of the other end. */
function readRange(left: string, right: string, wanted: Unit): Taken<TypedQuantity> {
  const unitOfEnd = (text: string): string => {
    const scan = scanNumber(text);
    return scan.ok ? scan.value.unit : '';
  };
  const from = readOne(left, wanted, unitOfEnd(right));
  if (!from.ok)
    return refuse(
      from.refusal.text,
      from.refusal.offers.map((offer) => `${offer} .. ${right}`),
    );
  const to = readOne(right, wanted, unitOfEnd(left));
  if (!to.ok)
    return refuse(
      to.refusal.text,
      to.refusal.offers.map((offer) => `${left} .. ${offer}`),
    );
  const ends = [from.value.base, to.value.base].sort((a, b) => a.compare(b)).map(exactOf);
  const remarks = [...new Set([...from.value.remarks, ...to.value.remarks])];
  return take(
    { kind: 'interval', from: ends[0] ?? null, to: ends[1] ?? null, closed: true, unit: to.value.unit.text },
    remarks,
  );
}

/** `> 200k`, `<= 0.5 V`. */
function readBound(sign: string, text: string, wanted: Unit): Taken<TypedQuantity> {
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

const take = (
  understood: TypedQuantity['understood'],
  remarks: readonly string[],
  none = false,
): Taken<TypedQuantity> => ({
  ok: true,
  value: { understood, mark: null, none, remarks },
});

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});

const print = (number: string, unit: string): string => `${number} ${unit}`.trim();

const example = (unit: Unit): string => print('1', unit.text);
