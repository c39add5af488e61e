import Fraction from 'fraction.js';

/** A text cut into its number and what follows it. */
interface ScannedNumber {
  readonly value: Fraction;
  /** The number with a decimal point: `4.7`. */
  readonly number: string;
  /** What is left for the unit, as written: of `4k7 Ω` it is `k Ω`. */
  readonly unit: string;
  /** The number as it was written, with its decimal comma if it had one. */
  readonly written: string;
}

export type Scan =
  | { readonly ok: true; readonly value: ScannedNumber }
  | {
      readonly ok: false;
      /** What is wrong, as a clause about the text: `holds no number`. */
      readonly why: string;
      /** Numbers that could have been meant. */
      readonly instead: readonly string[];
      readonly unit: string;
    };

/** Powers of ten beyond this are no reading of anything. */
const mostPower = 30;

// sign, digits with marks and groups, exponent, the rest
const shape = /^([+-]?)\s*([\d.,](?:[\d.,'’_ ]*[\d.,])?)?(?:e([+-]?\d+))?(.*)$/is;
const plainRun = /^(\d*)(?:[.,](\d*))?$/;
// The unit stands where the decimal point would: `4k7`, `3V3`, `R47`, with perhaps a unit behind it.
const rkm = /^(\p{L})(\d+)(\D*)$/u;
const rkmFirst = /^[Rpnuµμmk]$/i;

/** @param text tidied
 *  @example '25,2 MHz' → 25.2 and 'MHz'; '4k7' → 4.7 and 'k'; 'R47' → 0.47 and 'R' */
export function scanNumber(text: string): Scan {
  const [, sign = '', run, power, rest = ''] = shape.exec(text) ?? [];
  const unit = rest.trim();
  const split = power === undefined ? rkm.exec(rest) : null;
  if (split && (run === undefined ? rkmFirst.test(split[1] ?? '') : /^\d+$/.test(run))) {
    const [, letter = '', fraction = '', tail = ''] = split;
    return decimal(sign, run ?? '0', fraction, 0, letter + tail, text.slice(0, text.length - tail.length));
  }
  if (run === undefined) return { ok: false, ...noNumberFirst(text), unit };
  const [, whole = '', fraction = ''] = plainRun.exec(run) ?? [];
  if (whole + fraction === '') return { ok: false, ...misshapen(run), unit };
  if (/\d/.test(unit)) {
    const number = `${sign}${whole || '0'}${fraction && '.'}${fraction}`;
    return {
      ok: false,
      why: 'has digits after the unit',
      instead: [number],
      unit: unit.replace(/\d.*$/s, '').trim(),
    };
  }
  return decimal(sign, whole, fraction, Number(power ?? 0), unit, text.slice(0, text.length - rest.length));
}

function decimal(
  sign: string,
  whole: string,
  fraction: string,
  power: number,
  unit: string,
  written: string,
): Scan {
  const mantissa = `${sign === '-' ? '-' : ''}${whole || '0'}${fraction && '.'}${fraction}`;
  const digits = BigInt(whole + fraction);
  const size = String(digits).length - 1 - fraction.length + power;
  if (Math.abs(power) > mostPower || (digits !== 0n && Math.abs(size) > mostPower)) {
    return {
      ok: false,
      why: 'is beyond anything an instrument shows',
      instead: power === 0 ? [] : [mantissa],
      unit,
    };
  }
  const shift = power - fraction.length;
  const signed = sign === '-' ? -digits : digits;
  const value =
    shift < 0 ? new Fraction(signed, 10n ** BigInt(-shift)) : new Fraction(signed * 10n ** BigInt(shift));
  const number = power === 0 ? mantissa : `${mantissa}e${power}`;
  return { ok: true, value: { value, number, unit, written: written.trim() } };
}

/** `V`, `= 5`, `about 5 V`. */
function noNumberFirst(text: string): { readonly why: string; readonly instead: readonly string[] } {
  const [within] = /\d+(?:[.,]\d+)?/.exec(text) ?? [];
  return within === undefined
    ? { why: 'holds no number', instead: [] }
    : { why: 'does not begin with a number', instead: [within.replace(',', '.')] };
}

/** `1.2.3`, `1,234.5`, `12 5`, a point alone. */
function misshapen(run: string): { readonly why: string; readonly instead: readonly string[] } {
  const parts = run.split(/[.,'’_ ]+/).filter((part) => part !== '');
  const [first] = parts;
  if (first === undefined) return { why: 'holds no digit', instead: [] };
  if (parts.length === 1) return { why: 'has a decimal mark too many', instead: [first] };
  const joined = parts.join('');
  const early = `${first}.${joined.slice(first.length)}`;
  const last = parts.at(-1) ?? '';
  const late = `${joined.slice(0, -last.length)}.${last}`;
  if (run.includes('.') && run.includes(',')) {
    return { why: 'has both a comma and a point: the decimal mark alone is wanted', instead: [late] };
  }
  if (!/[.,]/.test(run)) return { why: 'has a gap inside the number', instead: [joined, late] };
  const thousands = parts.slice(1).every((part) => part.length === 3);
  return {
    why: 'has more than one decimal mark',
    instead: [...new Set(thousands ? [joined, early] : [early, late])],
  };
}
