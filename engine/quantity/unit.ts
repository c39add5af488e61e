import Fraction from 'fraction.js';
import { prefixTable, type Qualifier, qualifierTable, type UnitRow, unitTable } from './unit-table.ts';

/** A unit with its prefix and qualifier: `mVpp`. */
export interface Unit {
  /** The one way it is written when stored: `MHz`, `mVpp`, `V dc`, `kΩ`. */
  readonly text: string;
  readonly row: UnitRow;
  /** A prefix sign, or nothing. */
  readonly prefix: string;
  readonly qualifier: Qualifier;
  /** Value in the base unit = value * factor + offset. */
  readonly factor: Fraction;
  readonly offset: Fraction;
}

const known = new Map<string, Unit>();

/** The unit made of these parts; always the same object for the same parts. */
export function unitOf(row: UnitRow, prefix: string, qualifier: Qualifier): Unit {
  const text = prefix + row.symbol + (qualifier === '' ? '' : qualifierTable[qualifier].print);
  const found = known.get(text);
  if (found) return found;
  const power = BigInt(prefixTable[prefix]?.power ?? 0);
  const ten = power < 0n ? new Fraction(1n, 10n ** -power) : new Fraction(10n ** power);
  const [n, d] = row.factor ?? [1, 1];
  const [on, od] = row.offset ?? [0, 1];
  const unit = { text, row, prefix, qualifier, factor: ten.mul(n, d), offset: new Fraction(on, od) };
  known.set(text, unit);
  return unit;
}

/** The prefixes that go with a unit, none included. */
export const prefixesOf = (row: UnitRow): readonly string[] => ['', ...row.prefixes];

export const rowsOf = (family: string): readonly UnitRow[] =>
  unitTable.filter((row) => row.family === family);

export const toBase = (unit: Unit, value: Fraction): Fraction => value.mul(unit.factor).add(unit.offset);
export const fromBase = (unit: Unit, base: Fraction): Fraction => base.sub(unit.offset).div(unit.factor);
