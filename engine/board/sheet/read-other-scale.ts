import type { FactsContext } from '../../facts/facts-context.ts';
import { type RawTable, textOf } from '../../facts/raw.ts';
import { readUnit } from '../../facts/read-unit.ts';
import { textProblems } from '../../facts/text-problems.ts';
import type { Path } from '../../model/front-matter.ts';
import type { SingleMeasure } from '../../model/reading.ts';
import { parseUnit } from '../../quantity/index.ts';
import { parseExpect, parseScale } from '../../scale/index.ts';
import { checkLimits } from './check-limits.ts';
import type { KnownSetting } from './known-settings.ts';

type Quantity = Extract<SingleMeasure, { readonly kind: 'quantity' }>;

/** Other limits of a quantity; null where they cannot be used.
 *  @param own as the shared file declares it */
export function readOtherScale(
  raw: RawTable,
  key: 'expect' | 'scale',
  own: Quantity | null,
  known: readonly KnownSetting[],
  path: Path,
  context: FactsContext,
): Quantity | null {
  const text = textOf(raw[key]);
  if (text === null) return null;
  const settings = known.map(({ setting }) => setting);
  const written = readUnit(raw, path, context);
  if ('unit' in raw && written === null) return null;
  const unit = own?.unit ?? written ?? unitIn(text, known);
  if (unit === null) {
    context.atKey(path, { code: 'sheet-unit', reading: String(path.at(-1)) });
    return null;
  }
  const place = [...path, key];
  const parsed = key === 'scale' ? parseScale(text, unit) : parseExpect(text, unit, settings);
  const problems = parsed.ok ? checkLimits(parsed.value, unit, known) : parsed.problems;
  textProblems(text, place, 'value', problems, context);
  return parsed.ok && problems.length === 0 ? { kind: 'quantity', unit, scale: parsed.value } : null;
}

/** The unit that limits are written in, where no shared file gives it: of the first quantity, else of the first setting. */
function unitIn(text: string, known: readonly KnownSetting[]): string | null {
  for (const [, letters = ''] of text.matchAll(/\d\s*([\p{L}°Ωµ]+)/gu)) {
    const unit = parseUnit(letters);
    if (unit.ok && unit.value.row.family !== 'counts') return unit.value.text;
  }
  for (const [word] of text.matchAll(/[\p{L}_][\p{L}\p{N}_]*/gu)) {
    const named = known.find(({ setting }) => setting.id === word)?.setting;
    if (named?.kind === 'quantity') return named.unit;
  }
  return null;
}
