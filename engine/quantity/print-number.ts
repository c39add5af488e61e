import type Fraction from 'fraction.js';

/** Digits up to which an exact value is printed in full. */
const wholeDigits = 8;
/** Digits of a value that has more, or no end. */
const roundedDigits = 6;

/** A decimal number that reads back: exact where it is short, else rounded half away from zero. */
export function printNumber(value: Fraction): string {
  if (value.n === 0n) return '0';
  const sign = value.s < 0n ? '-' : '';
  const { digits, power } = shortExact(value) ?? rounded(value);
  return sign + layOut(digits, power);
}

interface Decimal {
  /** Without zeros at either end. */
  readonly digits: string;
  /** Place of the first digit: 0 for the ones, -1 for the tenths. */
  readonly power: number;
}

function decimal(whole: bigint, places: number): Decimal {
  const text = String(whole);
  return { digits: text.replace(/0+$/, ''), power: text.length - 1 - places };
}

/** The value in full, if it has few enough digits. */
function shortExact({ n, d }: Fraction): Decimal | null {
  let rest = d;
  let places = 0;
  let scale = 1n;
  for (const prime of [2n, 5n]) {
    let count = 0;
    while (rest % prime === 0n) {
      rest /= prime;
      count += 1;
    }
    places = Math.max(places, count);
  }
  if (rest !== 1n) return null;
  scale = 10n ** BigInt(places);
  const exact = decimal((n * scale) / d, places);
  return exact.digits.length <= wholeDigits ? exact : null;
}

function rounded({ n, d }: Fraction): Decimal {
  let places = roundedDigits - (String(n).length - String(d).length);
  let whole = round(n, d, places);
  // The lengths give the size of n / d, or one power of ten too little.
  if (String(whole).length > roundedDigits) {
    places -= 1;
    whole = round(n, d, places);
  }
  return decimal(whole, places);
}

function round(n: bigint, d: bigint, places: number): bigint {
  const top = places > 0 ? n * 10n ** BigInt(places) : n;
  const bottom = places < 0 ? d * 10n ** BigInt(-places) : d;
  return (2n * top + bottom) / (2n * bottom);
}

function layOut(digits: string, power: number): string {
  if (power < -6 || power > 11) {
    return `${digits[0]}${digits.length > 1 ? '.' : ''}${digits.slice(1)}e${power}`;
  }
  if (power < 0) return `0.${'0'.repeat(-power - 1)}${digits}`;
  const whole = digits.slice(0, power + 1).padEnd(power + 1, '0');
  const fraction = digits.slice(power + 1);
  return fraction === '' ? whole : `${whole}.${fraction}`;
}
