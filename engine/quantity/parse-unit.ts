import type { Parsed } from '../model/text-problem.ts';
import { nearest } from '../names/nearest.ts';
import { fold, spellingsOf } from './spellings-of.ts';
import { splitQualifier } from './split-qualifier.ts';
import { type Unit, unitOf } from './unit.ts';
import { unitTable } from './unit-table.ts';

export const families: readonly string[] = [...new Set(unitTable.map((row) => row.family))];

/** Without spaces, hyphens, dots and brackets: `V p-p` and `V.d.c.` become `Vpp` and `Vdc`. */
export const squash = (text: string): string => text.replace(/[\s\-._()]+/g, '');

/** The units of a family that a squashed text can mean; `sure` where its letter case is right too. */
export function unitsIn(
  family: string,
  text: string,
): { readonly units: readonly Unit[]; readonly sure: boolean } {
  const { exact, folded } = spellingsOf(family);
  const unit = exact.get(text);
  if (unit) return { units: [unit], sure: true };
  const split = splitQualifier(text);
  if (split !== null && split.rest !== '') {
    const plain = unitsIn(family, split.rest);
    const units = plain.units.filter((found) => found.row.qualified && found.qualifier === '');
    if (units.length > 0) {
      return {
        units: units.map((found) => unitOf(found.row, found.prefix, split.qualifier)),
        sure: plain.sure,
      };
    }
  }
  return { units: folded.get(fold(text)) ?? [], sure: false };
}

const longest = 40;
const parsed = new Map<string, Unit>();

/** A unit as files write it, in right letter case: `MHz`, `mVpp`, `V dc`, `kohm`. */
export function parseUnit(text: string): Parsed<Unit> {
  const before = parsed.get(text);
  if (before) return { ok: true, value: before };
  const squashed = squash(text);
  for (const family of families) {
    const { units, sure } = unitsIn(family, squashed);
    const [unit] = units;
    if (!unit || !sure) continue;
    // Only what is written the stored way is kept, so that the table cannot grow without end.
    if (unit.text === text) parsed.set(text, unit);
    return { ok: true, value: unit };
  }
  return {
    ok: false,
    problems: [{ code: 'unknown-unit', from: 0, to: text.length, unit: text, near: nearestUnit(squashed) }],
  };
}

function nearestUnit(text: string): string | null {
  if (text.length > longest) return null;
  for (const family of families) {
    const [unit] = unitsIn(family, text).units;
    if (unit) return unit.text;
  }
  if (text.length < 2) return null;
  const texts = families.flatMap((family) => [...spellingsOf(family).exact]);
  const near = nearest(
    text,
    texts.map(([spelling]) => spelling),
  )[0];
  return texts.find(([spelling]) => spelling === near)?.[1].text ?? null;
}

const plain = unitsIn('', '').units[0] as Unit;

/** The unit of a stored quantity or a reading. A text that is no unit counts as a plain number of it. */
export function storedUnit(text: string): Unit {
  const unit = parseUnit(text);
  return unit.ok ? unit.value : { ...plain, text };
}
