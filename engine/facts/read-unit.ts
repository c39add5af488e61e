import type { Path } from '../model/front-matter.ts';
import { parseUnit } from '../quantity/index.ts';
import type { FactsContext } from './facts-context.ts';
import { type RawTable, textOf } from './raw.ts';
import { textProblems } from './text-problems.ts';

/** The unit of a setting or reading as it is stored; null where there is none. */
export function readUnit(raw: RawTable, path: Path, context: FactsContext): string | null {
  const text = textOf(raw.unit);
  if (text === null) return null;
  const unit = parseUnit(text);
  if (!unit.ok) textProblems(text, [...path, 'unit'], 'value', unit.problems, context);
  return unit.ok ? unit.value.text : null;
}
