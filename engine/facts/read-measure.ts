import treeSchema from '../../schema/tree.schema.json' with { type: 'json' };
import { namesIn } from '../formula/index.ts';
import type { Path } from '../model/front-matter.ts';
import type { Measure, Scale } from '../model/reading.ts';
import type { Parsed } from '../model/text-problem.ts';
import { type CodeEntry, checkScale, parseCodes, parseExpect, parseScale } from '../scale/index.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { isMisspelt } from './is-misspelt.ts';
import { isTable, type RawTable, textOf } from './raw.ts';
import { readOptions } from './read-options.ts';
import type { ReadSettings } from './read-settings.ts';
import { readUnit } from './read-unit.ts';
import { textProblems } from './text-problems.ts';

const measureKeys = ['unit', 'scale', 'expect', 'options', 'codes'];
const readingKeys = Object.keys(treeSchema.$defs.reading.properties);
const together = new Set(['unit scale', 'unit expect', 'options', 'codes']);

/** How a reading is cut into bands. Where that is not to be known, bands that the author may have meant, so
 *  that what speaks of them is not wrong as well. */
export function readMeasure(
  raw: RawTable,
  path: Path,
  settings: ReadSettings,
  context: FactsContext,
): Measure {
  const found = measureKeys.filter((key) => key in raw);
  const isMeant = measureKeys.some((key) => !(key in raw) && isMisspelt(key, raw, readingKeys));
  if (isMeant) context.unsure.add(String(path.at(-1)));
  else if (!together.has(found.join(' '))) context.atKey(path, { code: 'one-measure', of: 'reading', found });
  if ('codes' in raw) return readCodes(raw.codes, [...path, 'codes'], context);
  if ('options' in raw)
    return { kind: 'options', options: readOptions(raw.options, [...path, 'options'], context) };
  return readQuantity(raw, path, settings, context);
}

function readQuantity(raw: RawTable, path: Path, known: ReadSettings, context: FactsContext): Measure {
  const { settings, broken } = known;
  const unit = readUnit(raw, path, context);
  const key = 'scale' in raw ? 'scale' : 'expect';
  const text = textOf(raw[key]);
  const place = [...path, key];
  if (text === null) return { kind: 'quantity', unit: unit ?? '', scale: emptyScale('', usualBands) };
  const bands = key === 'scale' ? bandsIn(text) : usualBands;
  if (unit === null) return { kind: 'quantity', unit: '', scale: emptyScale(text, bands) };
  const parsed: Parsed<Scale> = key === 'scale' ? parseScale(text, unit) : parseExpect(text, unit, settings);
  if (!parsed.ok) {
    textProblems(text, place, 'value', parsed.problems, context);
    return { kind: 'quantity', unit, scale: emptyScale(text, bands) };
  }
  const scale = parsed.value;
  const usesBroken = scale.limits.flatMap(namesIn).some((name) => broken.has(name));
  if (!usesBroken) textProblems(text, place, 'value', checkScale(scale, unit, settings), context);
  for (const band of key === 'scale' ? scale.bands : []) checkName(band, 'band', place, 'value', context);
  return { kind: 'quantity', unit, scale };
}

const usualBands = ['low', 'good', 'high'];

const emptyScale = (written: string, bands: readonly string[]): Scale => {
  const limits = bands.slice(1).map(() => ({ kind: 'name', name: '' }) as const);
  return { written, bands, limits, byMagnitude: false, nominal: null };
};

/** What stands where the bands of a scale stand. */
const bandsIn = (text: string): readonly string[] => [
  ...new Set(
    text
      .split('<')
      .filter((part, index) => index % 2 === 0 && part.trim() !== '')
      .map((part) => part.trim().slice(0, 60)),
  ),
];

function readCodes(raw: unknown, path: Path, context: FactsContext): Measure {
  const table = isTable(raw) ? raw : {};
  const keys = context.keysOf(path, table);
  const entries = keys.map((key): CodeEntry => {
    const value = table[key];
    const inner = isTable(value) ? value : { band: value };
    const band = textOf(inner.band) ?? 'other';
    checkName(band, 'band', isTable(value) ? [...path, key, 'band'] : [...path, key], 'value', context);
    return { key, band, means: textOf(inner.means) };
  });
  const { measure, problems } = parseCodes(entries);
  for (const { entry, problem } of problems) {
    const key = keys[entry] ?? '';
    textProblems(key, [...path, key], 'key', [problem], context);
  }
  return measure;
}
