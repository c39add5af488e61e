import type { Formula } from '../model/formula.ts';
import type { Span } from '../model/span.ts';

/** Where the parts of a formula stand in the text they were parsed from. A formula is stored as plain data
 *  without places, so they are kept beside it, for as long as it lives; one that was loaded has none. */
const spans = new WeakMap<Formula, Span>();

export function placed(formula: Formula, from: number, to: number): Formula {
  spans.set(formula, { from, to });
  return formula;
}

export const spanOfFormula = (formula: Formula): Span => spans.get(formula) ?? { from: 0, to: 0 };
