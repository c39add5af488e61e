import { storedUnit } from './parse-unit.ts';
import { rowsOf, unitOf } from './unit.ts';

/** The unit that stored values count in: `Hz` for `MHz`, `Vpp` for `mVpp`, `°C` for `°F`. */
export function baseUnit(unit: string): string {
  const { row, qualifier } = storedUnit(unit);
  const base = rowsOf(row.family).find(({ factor }) => factor === undefined) ?? row;
  return unitOf(base, '', qualifier).text;
}
