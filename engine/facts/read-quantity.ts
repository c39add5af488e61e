import { dimensionOf, fits, namesIn } from '../formula/index.ts';
import type { Path } from '../model/front-matter.ts';
import type { Scale } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import type { Parsed } from '../model/text-problem.ts';
import { readWritten } from '../quantity/index.ts';
import { checkScale, parseExpect, parseScale } from '../scale/index.ts';
import { twinName } from '../scale/twin-of.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import type { Known } from './known.ts';
import { isQuantity, type Origin, type Quantity } from './origin.ts';
import { type RawTable, textOf } from './raw.ts';
import { readUnit } from './read-unit.ts';
import { textProblems } from './text-problems.ts';

/** A quantity, from the keys that are there and the reading it is like. */
export function readQuantity(
  raw: RawTable,
  path: Path,
  { like, from }: Origin,
  known: Known,
  context: FactsContext,
): Quantity {
  const inherited = like !== null && isQuantity(like) ? like : null;
  const written = readUnit(raw, path, context);
  const unit = written ?? inherited?.unit ?? (from !== null && !('unit' in raw) ? '' : null);
  const key = 'scale' in raw ? 'scale' : 'expect';
  const text = textOf(raw[key]);
  if (text === null) {
    if (inherited === null) return { kind: 'quantity', unit: unit ?? '', scale: emptyScale('', usualBands) };
    if (written !== null) checkUnit(written, inherited.unit, [...path, 'unit'], context);
    return { ...inherited, unit: unit ?? '' };
  }
  const bands = key === 'scale' ? bandsIn(text) : usualBands;
  if (unit === null) return { kind: 'quantity', unit: '', scale: emptyScale(text, bands) };
  return { kind: 'quantity', unit, scale: readScale(text, key, unit, raw, path, known, context) };
}

/** The limits of the reading it is like stay what they are. */
function checkUnit(unit: string, expected: string, path: Path, context: FactsContext): void {
  if (fits(dimensionOf(unit), dimensionOf(expected))) return;
  context.atValue(path, { code: 'wrong-unit', unit, expected });
}

function readScale(
  text: string,
  key: 'scale' | 'expect',
  unit: string,
  raw: RawTable,
  path: Path,
  { settings, broken }: Known,
  context: FactsContext,
): Scale {
  const place = [...path, key];
  const names = [...settings, twinOf(raw, unit)];
  const parsed: Parsed<Scale> = key === 'scale' ? parseScale(text, unit) : parseExpect(text, unit, names);
  if (!parsed.ok) {
    textProblems(text, place, 'value', parsed.problems, context);
    return emptyScale(text, key === 'scale' ? bandsIn(text) : usualBands);
  }
  const scale = parsed.value;
  const usesBroken = scale.limits.flatMap(namesIn).some((name) => broken.has(name));
  if (!usesBroken) textProblems(text, place, 'value', checkScale(scale, unit, names), context);
  for (const band of key === 'scale' ? scale.bands : []) checkName(band, 'band', place, 'value', context);
  return scale;
}

/** To limits, the known-good board is one more name: in the reading's own unit, and what it usually shows. */
function twinOf(raw: RawTable, unit: string): Setting {
  const usual = readWritten(textOf(raw.usual) ?? '', unit);
  return {
    kind: 'quantity',
    id: twinName,
    is: 'the known-good board',
    unit,
    usual: usual.ok ? usual.value : null,
  };
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
