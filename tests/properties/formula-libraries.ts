import fc from 'fast-check';
import { evaluate, type Unit } from 'mathjs';
import { checkFormula, dimensionOf, evaluateFormula, parseFormula } from '../../engine/formula/index.ts';
import { type Kind, qtyUnit, type RandomFormula, randomFormula } from '../helpers/random-formulas.ts';

const siUnits: Readonly<Record<Kind, string>> = {
  V: 'V',
  A: 'A',
  Ω: 'ohm',
  Hz: 'Hz',
  s: 's',
  F: 'F',
  H: 'H',
  W: 'W',
  '': '',
};

function parsed({ text }: RandomFormula) {
  const formula = parseFormula(text);
  if (!formula.ok) throw new Error(`Not read: ${text}: ${JSON.stringify(formula.problems)}`);
  return formula.value;
}

/** In base units. */
function ours(formula: RandomFormula): number {
  const read = parsed(formula);
  const units = checkFormula(read, new Map());
  if (!units.ok) throw new Error(`Refused: ${formula.text}: ${JSON.stringify(units.problems)}`);
  const { vector } = dimensionOf(formula.kind);
  if (units.value.vector.join() !== vector.join()) throw new Error(`Not in ${formula.kind}: ${formula.text}`);
  const found = evaluateFormula(read, () => null);
  if (found.kind !== 'value') throw new Error(`No value: ${formula.text}`);
  return found.value.valueOf();
}

function mathjs({ math, kind }: RandomFormula): number {
  const found: number | Unit = evaluate(math);
  return typeof found === 'number' ? found : found.toNumber(siUnits[kind]);
}

/** Relative: both libraries compute in doubles. */
const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));

function agree(formula: RandomFormula): void {
  const value = ours(formula);
  const { kind, qty, text, math } = formula;
  const others = [mathjs(formula), qty().to(qtyUnit(kind)).scalar];
  if (others.every((other) => near(value, other))) return;
  throw new Error(`${text} is ${value}, and ${others.join(' and ')} elsewhere (${math})`);
}

function refused(formula: RandomFormula): void {
  const { text, math } = formula;
  const units = checkFormula(parsed(formula), new Map());
  const [problem, ...others] = units.ok ? [] : units.problems;
  if (problem?.code !== 'unlike-units' || problem.related === undefined || others.length > 0) {
    throw new Error(`Not refused once: ${text}: ${JSON.stringify(units)}`);
  }
  const operands = [problem, problem.related].map(({ from, to }) => text.slice(from, to));
  if (operands.some((operand) => operand === '')) {
    throw new Error(`Not both places: ${text}: ${operands.join(' | ')}`);
  }
  if (refusal(math) === null) throw new Error(`mathjs takes it: ${math}`);
}

function refusal(math: string): unknown {
  try {
    evaluate(math);
    return null;
  } catch (error) {
    return error;
  }
}

/** A generated formula has endlessly many smaller ones; the seed and the formula itself say enough. */
const each = (broken: boolean, runs: number, check: (formula: RandomFormula) => void): void =>
  fc.assert(
    fc.property(fc.noShrink(randomFormula(broken)), (formula) => {
      if (formula.broken === broken) check(formula);
    }),
    { numRuns: runs },
  );

/** What our formulas compute is what two general-purpose libraries compute. */
export const formulasAgree = (runs: number): void => each(false, runs, agree);

/** Where unlike kinds meet, ours say so at both operands; and mathjs refuses as well. */
export const brokenFormulasRefused = (runs: number): void => each(true, runs, refused);
