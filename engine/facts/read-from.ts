import { checkFormula, type Dimension, dimensionOf, fits, parseFormula } from '../formula/index.ts';
import type { Formula } from '../model/formula.ts';
import type { Path } from '../model/front-matter.ts';
import type { Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import type { TextProblem } from '../model/text-problem.ts';
import type { FactsContext } from './facts-context.ts';
import { placeInText } from './place-in-text.ts';
import { renameFix } from './rename-fix.ts';
import { textProblems } from './text-problems.ts';

/** What a derived reading is computed from; null where it cannot be read. */
export function readFrom(text: string, path: Path, context: FactsContext): Formula | null {
  const parsed = parseFormula(text, { comparison: true });
  if (!parsed.ok) textProblems(text, path, 'value', parsed.problems, context);
  return parsed.ok ? parsed.value : null;
}

export type Dimensions = ReadonlyMap<string, Dimension | null>;

/** What `from` can name, and in which unit; null where it is no quantity. */
export const inputDimensions = (
  settings: readonly Setting[],
  readings: ReadonlyMap<string, Reading>,
): Dimensions =>
  new Map([
    ...[...readings.values()].map(
      ({ id, measure }) => [id, measure.kind === 'quantity' ? dimensionOf(measure.unit) : null] as const,
    ),
    ...settings.map(
      (setting) => [setting.id, setting.kind === 'quantity' ? dimensionOf(setting.unit) : null] as const,
    ),
  ]);

/** Tells names in `from` that stand for no quantity, units that do not go together, and a result of another kind than
 *  the reading is in. */
export function checkFrom(
  text: string,
  { from, measure }: Reading,
  dimensions: Dimensions,
  readings: ReadonlyMap<string, Reading>,
  path: Path,
  context: FactsContext,
): void {
  if (from === null) return;
  const found = checkFormula(from, dimensions);
  if (!found.ok) {
    for (const problem of found.problems) tell(problem, text, readings, path, context);
  } else if (measure.kind === 'quantity' && !fits(dimensionOf(measure.unit), found.value)) {
    const facts = { code: 'wrong-unit', unit: found.value.text, expected: measure.unit } as const;
    context.atValue(path, facts);
  }
}

/** In limits names are settings; here they are readings as well, and the words have to say so. */
function tell(
  problem: TextProblem,
  text: string,
  readings: ReadonlyMap<string, Reading>,
  path: Path,
  context: FactsContext,
): void {
  const whole = context.spanOf(path);
  const span = placeInText(text, whole, problem) ?? whole;
  if (problem.code === 'unknown-name') {
    const { name, near } = problem;
    context.at(span, { code: 'no-input-named', name, near }, renameFix(span, name, near));
  } else if (problem.code === 'not-a-number') {
    const of = readings.has(problem.name) ? 'reading' : 'setting';
    context.at(span, { code: 'input-not-number', name: problem.name, of });
  } else {
    textProblems(text, path, 'value', [problem], context);
  }
}
