import { checkName } from '../../facts/check-name.ts';
import type { FactsContext } from '../../facts/facts-context.ts';
import { isTable, tableOf, textOf } from '../../facts/raw.ts';
import { textProblems } from '../../facts/text-problems.ts';
import type { Path } from '../../model/front-matter.ts';
import type { SingleMeasure } from '../../model/reading.ts';
import { parseBeeps } from '../../scale/parse-beeps.ts';
import { parseCodes } from '../../scale/parse-codes.ts';

const parsers = { codes: parseCodes, beeps: parseBeeps } as const;

/** What the codes or beeps of this board's firmware mean. */
export function readMeanings(
  raw: unknown,
  kind: keyof typeof parsers,
  path: Path,
  context: FactsContext,
): SingleMeasure {
  const table = tableOf(raw);
  const keys = context.keysOf(path, table);
  const entries = keys.map((key) => {
    const value = table[key];
    const inner = isTable(value) ? value : { band: value };
    const band = textOf(inner.band) ?? 'other';
    checkName(band, 'band', isTable(value) ? [...path, key, 'band'] : [...path, key], 'value', context);
    return { key, band, means: textOf(inner.means) };
  });
  const { measure, problems } = parsers[kind](entries);
  for (const { entry, problem } of problems) {
    const key = keys[entry] ?? '';
    textProblems(key, [...path, key], 'key', [problem], context);
  }
  return measure;
}
