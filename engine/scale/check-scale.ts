import type Fraction from 'fraction.js';
import {
  checkFormula,
  type Dimension,
  dimensionOf,
  evaluateFormula,
  fits,
  namesIn,
  spanOfFormula,
} from '../formula/index.ts';
import type { StoredQuantity } from '../model/exact.ts';
import type { Formula } from '../model/formula.ts';
import type { Scale } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import type { TextProblem } from '../model/text-problem.ts';
import { fromStored, printQuantity, toStored } from '../quantity/index.ts';
import { twinName } from './twin-of.ts';

/** What is wrong with the limits of a reading in `unit`: names, units, and their order at the usual
 *  values of the settings and of the known-good board. Places count in the text the scale was parsed from.
 *  @param twin what a known-good board usually shows in this reading, where the author says */
export function checkScale(
  scale: Scale,
  unit: string,
  settings: readonly Setting[],
  twin: StoredQuantity | null = null,
): readonly TextProblem[] {
  const dimensions = new Map<string, Dimension | null>(
    settings.map((setting) => [setting.id, setting.kind === 'quantity' ? dimensionOf(setting.unit) : null]),
  );
  dimensions.set(twinName, dimensionOf(unit));
  const problems = scale.limits.flatMap((limit) => limitProblems(limit, unit, dimensions));
  const found = problems.length > 0 ? problems : orderProblems(scale.limits, unit, settings, twin);
  return found.filter((problem, at) => found.findIndex((other) => same(other, problem)) === at);
}

/** A nominal stands in both limits, and so does what is wrong with it. */
const same = (a: TextProblem, b: TextProblem): boolean => a.code === b.code && a.from === b.from;

function limitProblems(
  limit: Formula,
  unit: string,
  dimensions: ReadonlyMap<string, Dimension | null>,
): readonly TextProblem[] {
  const found = checkFormula(limit, dimensions);
  if (!found.ok) return found.problems;
  if (fits(dimensionOf(unit), found.value)) return [];
  return [{ ...spanOfFormula(limit), code: 'wrong-unit', unit: found.value.text, expected: unit }];
}

function orderProblems(
  limits: readonly Formula[],
  unit: string,
  settings: readonly Setting[],
  twin: StoredQuantity | null,
): readonly TextProblem[] {
  const usual = new Map<string, Fraction>();
  if (twin !== null) usual.set(twinName, fromStored(twin));
  for (const setting of settings) {
    if (setting.kind === 'quantity' && setting.usual !== null)
      usual.set(setting.id, fromStored(setting.usual));
  }
  const problems: TextProblem[] = [];
  let below: { readonly value: Fraction; readonly formula: Formula } | null = null;
  for (const formula of limits) {
    const limit = evaluateFormula(formula, (name) => usual.get(name) ?? null);
    const place = spanOfFormula(formula);
    if (limit.kind === 'undefined') {
      problems.push({ ...place, code: 'division-by-zero', when: when([formula], settings, twin) });
    }
    if (limit.kind !== 'value') continue;
    if (below !== null && limit.value.lte(below.value)) {
      problems.push({
        ...place,
        code: 'limits-order',
        lower: printQuantity(toStored(below.value, unit)),
        upper: printQuantity(toStored(limit.value, unit)),
        when: when([below.formula, formula], settings, twin),
      });
    }
    below = { value: limit.value, formula };
  }
  return problems;
}

/** `fsb = 66 MHz`, or null where no setting is in it. */
function when(
  formulas: readonly Formula[],
  settings: readonly Setting[],
  twin: StoredQuantity | null,
): string | null {
  const names = new Set(formulas.flatMap(namesIn));
  const values = settings.flatMap((setting) =>
    names.has(setting.id) && setting.kind === 'quantity' && setting.usual !== null
      ? [`${setting.id} = ${printQuantity(setting.usual)}`]
      : [],
  );
  if (twin !== null && names.has(twinName)) values.push(`${twinName} = ${printQuantity(twin)}`);
  return values.length === 0 ? null : values.join(', ');
}
