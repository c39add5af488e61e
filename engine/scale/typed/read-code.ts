import type { Measure } from '../../model/reading.ts';
import type { Taken } from '../../model/refusal.ts';
import { tidy } from '../../quantity/index.ts';

type Codes = Extract<Measure, { kind: 'codes' }>;

/** A hexadecimal code as it was typed (`d`, `0D`, `0x0d`, `0Dh`), in upper case and with all its digits; or a word of the
 *  table such as `none`. */
export function readCode(codes: Codes, typed: string): Taken<string> {
  const text = tidy(typed);
  const word = codes.ranges.find(({ from }) => isWord(from) && from.toLowerCase() === text.toLowerCase());
  if (word) return { ok: true, value: word.from };
  const digits = digitsOf(text);
  if (text === '') return refuse('Nothing was typed', examples(codes));
  if (!/^[\dA-F]+$/.test(digits)) {
    const meant = digitsOf(text.replace(/o/gi, '0').replace(/[il]/gi, '1'));
    const offers =
      /^[\dA-F]+$/.test(meant) && meant.length <= codes.digits
        ? [meant.padStart(codes.digits, '0')]
        : examples(codes);
    return refuse(
      `"${text.slice(0, 64)}" is not a hexadecimal code: the digits are 0 to 9 and A to F`,
      offers,
    );
  }
  if (digits.length > codes.digits) {
    const offers = [...new Set([digits.slice(0, codes.digits), digits.slice(-codes.digits)])];
    return refuse(
      `"${text.slice(0, 64)}" has too many digits: a code of this reading has ${codes.digits}`,
      offers,
    );
  }
  return { ok: true, value: digits.padStart(codes.digits, '0') };
}

/** Keys of the table that stand for a dark display. */
export const isWord = (key: string): boolean => /^(none|blank)$/i.test(key);

const digitsOf = (text: string): string =>
  text
    .toUpperCase()
    .replace(/^(?:0X|\$|&H)(?=.)/, '')
    .replace(/(?<=.)H$/, '')
    .replace(/^0+(?=.)/, '');

const examples = ({ ranges, digits }: Codes): readonly string[] => {
  const keys = ranges.slice(0, 3).map(({ from }) => from);
  return keys.length > 0 ? keys : ['0'.repeat(digits)];
};

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
