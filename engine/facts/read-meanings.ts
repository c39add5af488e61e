import type { Path } from '../model/front-matter.ts';
import type { SingleMeasure } from '../model/reading.ts';
import { parseBeeps, parseCodes } from '../scale/index.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { isTable, tableOf, textOf } from './raw.ts';
import { textProblems } from './text-problems.ts';

const parsers = { codes: parseCodes, beeps: parseBeeps } as const;

/** What codes or beep patterns mean: a table of what is shown or heard, and its band. */
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
