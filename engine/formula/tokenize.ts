import type { TextProblem } from '../model/text-problem.ts';

export interface Token {
  readonly kind: 'number' | 'name' | 'sign';
  /** Signs are given in one form each: `*` for `×`. */
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

const signs: Readonly<Record<string, string>> = {
  '−': '-',
  '–': '-',
  '×': '*',
  '·': '*',
  '÷': '/',
  '≤': '<=',
  '≥': '>=',
  '=<': '<=',
  '=>': '>=',
};

const space = /[\s\u200b]+/y;
const name = /[\p{L}_][\p{L}\p{N}_]*/uy;
const sign = /[<>]=?|=[<>]|[-+*/(),−–×·÷≤≥]/y;
// Digits with marks, exponent, more letters and digits for `4k7`; then perhaps a unit and what kind of voltage it is.
const unit = String.raw`(?:\s*[\p{L}°%℃℉]+(?:\d+[\p{L}°%]*)?(?:(?<=p)-p|(?<=pk)-pk)?(?:\s+(?:p-p|pp|pk-pk|dc|ac|rms|pk|peak)(?![\p{L}\d_(]))?)?`;
const number = new RegExp(String.raw`(?:\d+(?:[.,]\d+)*|\.\d+)(?:e[+-]?\d+(?![\p{L}\d]))?${unit}`, 'iuy');
// Between brackets a comma parts two arguments.
const argument = new RegExp(String.raw`(?:\d+(?:\.\d+)*|\.\d+)(?:e[+-]?\d+(?![\p{L}\d]))?${unit}`, 'iuy');

/** Cuts a formula into tokens; numbers keep their unit. Stops at the first text that is none.
 *  @param offset where `text` begins in the text that places are counted in */
export function tokenize(
  text: string,
  offset: number,
): { readonly tokens: readonly Token[]; readonly problems: readonly TextProblem[] } {
  const tokens: Token[] = [];
  let depth = 0;
  let at = 0;
  const match = (pattern: RegExp): string | undefined => {
    pattern.lastIndex = at;
    return pattern.exec(text)?.[0];
  };
  while (at < text.length) {
    const blank = match(space);
    if (blank !== undefined) {
      at += blank.length;
      continue;
    }
    const found =
      token(match(depth > 0 ? argument : number), 'number') ??
      token(match(name), 'name') ??
      token(match(sign), 'sign');
    if (found === null) {
      const rest = text.slice(at).trim();
      return {
        tokens,
        problems: [
          {
            code: 'formula-syntax',
            from: offset + at,
            to: offset + at + rest.length,
            expected: 'a number, a name or + - * / ( )',
            found: rest,
          },
        ],
      };
    }
    const [kind, raw] = found;
    if (raw === '(') depth += 1;
    if (raw === ')') depth -= 1;
    tokens.push({
      kind,
      text: kind === 'sign' ? (signs[raw] ?? raw) : raw,
      from: offset + at,
      to: offset + at + raw.length,
    });
    at += raw.length;
  }
  return { tokens, problems: [] };
}

const token = (text: string | undefined, kind: Token['kind']): [Token['kind'], string] | null =>
  text === undefined ? null : [kind, text];
