import type { Parsed } from '../model/text-problem.ts';
import { nearest } from '../names/nearest.ts';
import { fold, spellingsOf } from './spellings-of.ts';
import { splitQualifier } from './split-qualifier.ts';
import { type Unit, unitOf } from './unit.ts';
import { unitTable } from './unit-table.ts';

export const families: readonly string[] = [...new Set(unitTable.map((row) => row.family))];

/** Without spaces, hyphens, dots and brackets: `V p-p` and `V.d.c.` become `Vpp` and `Vdc`. */
export const squash = (text: string): string => text.replace(/[\s\-._()]+/g, '') || text.trim();

interface Candidates {
  readonly units: readonly Unit[];
  /** The letter case is right too. */
  readonly sure: boolean;
}

/** The units of a family that a squashed text can mean. */
export function unitsIn(family: string, text: string): Candidates {
  const plain = plainUnitsIn(family, text);
  const split = plain.sure ? null : splitQualifier(text);
  if (split === null) return plain;
  const { units, sure } = plainUnitsIn(family, split.rest);
  const qualified = units.filter(({ row }) => row.qualified);
  if (qualified.length === 0) return plain;
  return { units: qualified.map(({ row, prefix }) => unitOf(row, prefix, split.qualifier)), sure };
}

function plainUnitsIn(family: string, text: string): Candidates {
  const { exact, folded } = spellingsOf(family);
  const unit = exact.get(text);
  return unit ? { units: [unit], sure: true } : { units: folded.get(fold(text)) ?? [], sure: false };
}

const longest = 40;
const parsed = new Map<string, Unit>();

/** A unit as files write it, in right letter case: `MHz`, `mVpp`, `V dc`, `kohm`. */
export function parseUnit(text: string): Parsed<Unit> {
  const before = parsed.get(text);
  if (before) return { ok: true, value: before };
  const squashed = text.length > longest ? '?' : squash(text);
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
