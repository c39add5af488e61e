/** The 32 letters and digits that are hardest to mistake when they are read out: Crockford's base 32, without I, L, O and U. */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** Letters that are heard or read for others. */
const mistaken: Readonly<Record<string, string>> = { I: '1', L: '1', O: '0' };

export const letterOf = (value: number): string => alphabet[value] ?? '';

/** The number of a letter as somebody typed it; null where no code has it. */
export function valueOfLetter(letter: string): number | null {
  const upper = letter.toUpperCase();
  const value = alphabet.indexOf(mistaken[upper] ?? upper);
  return value < 0 ? null : value;
}

/** A number of `bits` bits as numbers of five, the highest first. */
export function fives(value: bigint, bits: number): readonly number[] {
  const count = Math.ceil(bits / 5);
  return Array.from({ length: count }, (_, at) => Number((value >> BigInt(5 * (count - 1 - at))) & 31n));
}

export const fromFives = (values: readonly number[]): bigint =>
  values.reduce((sum, value) => (sum << 5n) | BigInt(value), 0n);
