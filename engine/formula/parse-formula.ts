import type { Formula } from '../model/formula.ts';
import type { Span } from '../model/span.ts';
import type { Parsed, TextProblem } from '../model/text-problem.ts';
import { nearest } from '../names/nearest.ts';
import { readWritten } from '../quantity/index.ts';
import { placed, spanOfFormula } from './formula-spans.ts';
import { functionNamed, functionNames } from './functions/index.ts';
import { type Token, tokenize } from './tokenize.ts';

interface FormulaContext {
  /** Where the formula begins in the text that problems are counted in. */
  readonly at?: number;
  /** Whether it may be true or false: `cpu_clk > bus * 1.2`. */
  readonly comparison?: boolean;
}

const longest = 500;
const deepest = 32;

/** A higher power holds its operands tighter. */
const powers: Readonly<Record<string, number>> = { '+': 1, '-': 1, '*': 2, '/': 2 };
const minusPower = 3;

/** Reads a formula: `fsb * 2`, `max(vcc * 60 %, 2 V)`. Names and units are looked at by `checkFormula`. */
export function parseFormula(
  text: string,
  { at = 0, comparison = false }: FormulaContext = {},
): Parsed<Formula> {
  if (text.length > longest) {
    const problem = syntax(
      { from: at, to: at + text.length },
      `at most ${longest} characters`,
      `${text.length}`,
    );
    return { ok: false, problems: [problem] };
  }
  const { tokens, problems } = tokenize(text, at);
  const end = at + text.trimEnd().length;
  return problems.length > 0 ? { ok: false, problems } : parseTokens(tokens, end, comparison);
}

function parseTokens(tokens: readonly Token[], end: number, comparison: boolean): Parsed<Formula> {
  const problems: TextProblem[] = [];
  let next = 0;
  const isSign = (text: string) => tokens[next]?.kind === 'sign' && tokens[next]?.text === text;

  const wants = (expected: string): null => {
    const token = tokens[next];
    problems.push(syntax(token ?? { from: end, to: end }, expected, token?.text ?? 'the end'));
    return null;
  };

  const expression = (power: number, depth: number): Formula | null => {
    let left = operand(depth);
    while (left !== null) {
      const token = tokens[next];
      const tighter = token?.kind === 'sign' ? (powers[token.text] ?? 0) : 0;
      if (token === undefined || tighter <= power) break;
      next += 1;
      const right = expression(tighter, depth + 1);
      if (right === null) return null;
      left = binary(token.text as '+', left, right);
    }
    return left;
  };

  const operand = (depth: number): Formula | null => {
    const token = tokens[next];
    if (depth > deepest) return wants(`at most ${deepest} brackets inside each other`);
    if (token === undefined) return wants('a value');
    next += 1;
    if (token.kind === 'number') return quantity(token.text, token, problems);
    if (token.kind === 'name') {
      return isSign('(')
        ? call(token, depth)
        : placed({ kind: 'name', name: token.text }, token.from, token.to);
    }
    if (token.text === '-') return minus(token, depth);
    if (token.text === '(') {
      const inner = expression(0, depth + 1);
      return inner && closed(inner);
    }
    next -= 1;
    return wants('a value');
  };

  const minus = (sign: Token, depth: number): Formula | null => {
    const token = tokens[next];
    if (token?.kind === 'number') {
      // The sign belongs to the number, because -40 °F is not the negative of 40 °F.
      next += 1;
      return quantity(`-${token.text}`, { from: sign.from, to: token.to }, problems);
    }
    const of = expression(minusPower, depth + 1);
    return of && placed({ kind: 'negate', of }, sign.from, spanOfFormula(of).to);
  };

  const call = (name: Token, depth: number): Formula | null => {
    next += 1;
    const args: Formula[] = [];
    do {
      const arg = expression(0, depth + 1);
      if (arg === null) return null;
      args.push(arg);
    } while (isSign(',') && next++ >= 0);
    const made = closed({ kind: 'call', name: name.text, arguments: args });
    if (made === null) return null;
    const place = { from: name.from, to: tokens[next - 1]?.to ?? end };
    const row = functionNamed(name.text);
    if (row === undefined) {
      problems.push({
        code: 'unknown-function',
        from: name.from,
        to: name.to,
        name: name.text,
        near: nearest(name.text, functionNames),
      });
    } else if (args.length < row.arity.least || args.length > row.arity.most) {
      const { least, most } = row.arity;
      const wanted = least === most ? `${least}` : `${least} to ${most}`;
      const expected = `${wanted} ${most === 1 ? 'value' : 'values'} for ${name.text}`;
      problems.push(syntax(place, expected, `${args.length}`));
    }
    return placed(made, place.from, place.to);
  };

  const closed = (inner: Formula): Formula | null => {
    if (!isSign(')')) return wants('")"');
    next += 1;
    return inner;
  };

  const top = (): Formula | null => {
    const left = expression(0, 0);
    const operator = comparison ? operatorOf(tokens[next]) : null;
    if (left === null || operator === null) return left;
    next += 1;
    const right = expression(0, 0);
    const { from } = spanOfFormula(left);
    return right && placed({ kind: 'compare', operator, left, right }, from, spanOfFormula(right).to);
  };

  const value = top();
  if (value !== null && next < tokens.length) wants('the end, or one of + - * /');
  return value === null || problems.length > 0 ? { ok: false, problems } : { ok: true, value };
}

type Operator = Extract<Formula, { readonly kind: 'compare' }>['operator'];

const comparisons: readonly Operator[] = ['<', '>', '<=', '>='];

const operatorOf = (token: Token | undefined): Operator | null =>
  (token?.kind === 'sign' && comparisons.find((operator) => operator === token.text)) || null;

function binary(operator: '+' | '-' | '*' | '/', left: Formula, right: Formula): Formula {
  return placed({ kind: 'binary', operator, left, right }, spanOfFormula(left).from, spanOfFormula(right).to);
}

/** A quantity with its unit; a number without one is a plain factor. */
function quantity(text: string, { from, to }: Span, problems: TextProblem[]): Formula {
  const plain = /^-?[\d.]+(?:e[+-]?\d+)?$/i.test(text);
  const read = readWritten(text, plain ? '' : null);
  if (!read.ok) {
    problems.push(
      ...read.problems.map((problem) => ({
        ...problem,
        from: problem.from + from,
        to: Math.min(to, problem.to + from),
      })),
    );
  }
  return placed({ kind: 'quantity', ...(read.ok ? read.value : { value: '0', unit: '' }) }, from, to);
}

const syntax = ({ from, to }: Span, expected: string, found: string): TextProblem => ({
  code: 'formula-syntax',
  from,
  to,
  expected,
  found,
});
