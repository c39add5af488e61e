import { evaluateFormula, namesIn, placed, spanOfFormula } from '../formula/index.ts';
import type { Formula } from '../model/formula.ts';
import type { Scale } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import type { Parsed, TextProblem } from '../model/text-problem.ts';
import { isNegative } from './is-negative.ts';
import { parseLimit } from './parse-limit.ts';
import { withTolerance } from './with-tolerance.ts';

const longest = 1000;
const atLeast = /^\s*(?:≥|>=|=>|>|at least\b)/i;
const atMost = /^\s*(?:≤|<=|=<|<|at most\b)/i;
const tolerance = /±|\+\/[-−]|\+[-−]/;
const range = /\.{2,3}|…/;

/** Reads the short forms of a scale, with the bands low, good and high:
 *  `5 V ± 5 %`, `4 V .. 5.25 V`, `≥ 4 V`, `at most 0.7 V`, `fsb ± 1 %`.
 *  @param unit the reading's, canonical
 *  @param settings to know which names stand for negative rails */
export function parseExpect(text: string, unit: string, settings: readonly Setting[] = []): Parsed<Scale> {
  const written = text.trim();
  const scale = (
    bands: readonly string[],
    limits: readonly Formula[],
    byMagnitude = false,
    nominal: Formula | null = null,
  ) => ({
    ok: true as const,
    value: { written, bands, limits, byMagnitude, nominal },
  });

  if (text.length > longest) return fail({ from: 0, to: text.length, code: 'expect-shape', found: written });
  const bound = atLeast.exec(text) ?? atMost.exec(text);
  if (bound) {
    const [sign] = bound;
    const limit = parseLimit(text.slice(sign.length), sign.length, unit);
    if (!limit.ok) return limit;
    return scale(atLeast.test(text) ? ['low', 'good'] : ['good', 'high'], [limit.value]);
  }

  const threeBands = (limits: readonly Formula[], negative: boolean, nominal: Formula | null) =>
    scale(negative ? ['high', 'good', 'low'] : ['low', 'good', 'high'], limits, negative, nominal);

  const plusMinus = tolerance.exec(text);
  if (plusMinus) {
    const { index, 0: sign } = plusMinus;
    const nominal = parseLimit(text.slice(0, index), 0, unit);
    if (!nominal.ok) return nominal;
    const after = index + sign.length;
    const negative = isNegative(nominal.value, settings);
    const limits = withTolerance(nominal.value, text.slice(after), after, unit, negative);
    return limits.ok ? threeBands(limits.value, negative, nominal.value) : limits;
  }

  const between = range.exec(text);
  if (between) {
    const { index, 0: sign } = between;
    const ends = parseEnds(text.slice(0, index), text.slice(index + sign.length), index + sign.length, unit);
    if (!ends.ok) return ends;
    return threeBands(
      inOrder(ends.value),
      ends.value.every((end) => isNegative(end, settings)),
      null,
    );
  }

  const nominal = parseLimit(text, 0, unit);
  const place = { from: 0, to: text.length };
  if (nominal.ok) return fail({ ...place, code: 'no-tolerance', nominal: written });
  return /[<>=]/.test(text) ? fail({ ...place, code: 'expect-shape', found: written }) : nominal;
}

/** `4 .. 5.25 V`: an end without a unit takes that of the other one. */
function parseEnds(
  left: string,
  right: string,
  at: number,
  unit: string,
): Parsed<readonly [Formula, Formula]> {
  const bare = /^\s*[-−+]?\d+(?:\.\d+)?\s*$/;
  const lent = /\d\s*([\p{L}°%][\p{L}°%\s-]*)$/u.exec(right)?.[1] ?? '';
  const from = parseLimit(bare.test(left) ? `${left.trimEnd()} ${lent}` : left, 0, unit);
  const to = parseLimit(right, at, unit);
  if (from.ok && to.ok) return { ok: true, value: [from.value, to.value] };
  return { ok: false, problems: [from, to].flatMap((end) => (end.ok ? [] : end.problems)) };
}

/** Low end first. What only the settings can decide is left to them. */
function inOrder([a, b]: readonly [Formula, Formula]): readonly [Formula, Formula] {
  const [first, second] = [a, b].map((end) => evaluateFormula(end, () => null));
  if (first?.kind === 'value' && second?.kind === 'value')
    return first.value.gt(second.value) ? [b, a] : [a, b];
  if ([a, b].every((end) => namesIn(end).length === 0)) return [a, b];
  const call = (name: string, end: Formula): Formula => {
    const { from, to } = spanOfFormula(end);
    return placed({ kind: 'call', name, arguments: [a, b] }, from, to);
  };
  return [call('min', a), call('max', b)];
}

const fail = (problem: TextProblem): Parsed<never> => ({ ok: false, problems: [problem] });
