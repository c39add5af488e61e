import { parseFormula, spanOfFormula } from '../formula/index.ts';
import type { Formula } from '../model/formula.ts';
import type { Parsed } from '../model/text-problem.ts';
import { storedUnit } from '../quantity/index.ts';

/** A limit of a reading in `unit`: a formula, whose units must be written out.
 *  @param at where `text` begins in the whole */
export function parseLimit(text: string, at: number, unit: string): Parsed<Formula> {
  const start = text.length - text.trimStart().length;
  const formula = parseFormula(text.trim(), { at: at + start });
  if (!formula.ok || !lacksUnit(formula.value, unit)) return formula;
  const written = text.trim();
  return {
    ok: false,
    problems: [
      { ...spanOfFormula(formula.value), code: 'not-a-quantity', text: written, near: `${written} ${unit}` },
    ],
  };
}

/** `45` as a limit of a reading in per cent would silently be 4500 %. */
export function lacksUnit(formula: Formula, unit: string): boolean {
  if (formula.kind !== 'quantity' || formula.unit !== '') return false;
  const { row } = storedUnit(unit);
  return row.symbol !== '' && row.family !== 'counts';
}
