/** Sums and products in the field of 32 elements, GF(2)[x] / (x⁵ + x² + 1), where every letter of a code is a number. Two check
 *  letters make every code a multiple of (x − 1)(x − α): any one wrong letter is found and can be put right, any two are
 *  noticed, and so are two that changed places (Reed and Solomon, 1960). */

const powers: number[] = [];
for (let at = 0, value = 1; at < 31; at += 1) {
  powers.push(value);
  value <<= 1;
  if (value & 32) value ^= 0b100101;
}

const power = (at: number): number => powers[((at % 31) + 31) % 31] ?? 0;
const logarithm = (value: number): number => powers.indexOf(value);

const times = (a: number, b: number): number => (a === 0 || b === 0 ? 0 : power(logarithm(a) + logarithm(b)));

/** The longest code whose letters can be told apart. */
export const longestCode = 31;

/** Σ letters, and Σ letters · α^place, counted from the end: both 0 in a code that is right. */
function syndromes(letters: readonly number[]): readonly [number, number] {
  let [plain, placed] = [0, 0];
  for (const letter of letters) {
    plain ^= letter;
    placed = times(placed, 2) ^ letter;
  }
  return [plain, placed];
}

/** The letters with two more behind them.
 *  @param letters numbers from 0 to 31, at most 29 */
export function withCheckLetters(letters: readonly number[]): readonly number[] {
  const [plain, placed] = syndromes([...letters, 0, 0]);
  // a + b = plain, aα + b = placed
  const first = divide(plain ^ placed, 1 ^ 2);
  return [...letters, first, plain ^ first];
}

const divide = (a: number, b: number): number => (a === 0 ? 0 : power(logarithm(a) - logarithm(b)));

/** What the check letters say of a code. */
export type CheckedLetters =
  | { readonly is: 'right' }
  /** One letter is wrong, if only one is: at this place it should be that. */
  | { readonly is: 'mistyped'; readonly at: number; readonly meant: number }
  | { readonly is: 'wrong' };

export function checkLetters(letters: readonly number[]): CheckedLetters {
  const [plain, placed] = syndromes(letters);
  if (plain === 0 && placed === 0) return { is: 'right' };
  if (plain === 0 || placed === 0) return { is: 'wrong' };
  const fromEnd = (logarithm(placed) - logarithm(plain) + 31) % 31;
  const at = letters.length - 1 - fromEnd;
  return at < 0 ? { is: 'wrong' } : { is: 'mistyped', at, meant: (letters[at] ?? 0) ^ plain };
}
