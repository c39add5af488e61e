import { prefixesOf, rowsOf, type Unit, unitOf } from './unit.ts';
import { prefixTable, type UnitRow } from './unit-table.ts';

/** Every way to write the units of one family, qualifiers apart. */
export interface Spellings {
  /** Spellings that leave no doubt: `MHz`, `mΩ`, `milliohm`. */
  readonly exact: ReadonlyMap<string, Unit>;
  /** The same in lower case, where several units can meet: `mohm` is milliohm and megohm. */
  readonly folded: ReadonlyMap<string, readonly Unit[]>;
}

const made = new Map<string, Spellings>();

export function spellingsOf(family: string): Spellings {
  const found = made.get(family);
  if (found) return found;
  const exact = new Map<string, Unit>();
  const folded = new Map<string, Unit[]>();
  const foldIn = (text: string, unit: Unit) => {
    const units = folded.get(fold(text)) ?? [];
    if (!units.includes(unit)) units.push(unit);
    folded.set(fold(text), units);
  };
  for (const row of rowsOf(family)) {
    for (const prefix of prefixesOf(row)) {
      const unit = unitOf(row, prefix, '');
      for (const [text, sure] of spellings(row, prefix)) {
        if (sure) exact.set(text, unit);
        foldIn(text, unit);
      }
    }
    for (const text in row.old) foldIn(text, unitOf(row, row.old[text] ?? '', ''));
  }
  const spelled = { exact, folded };
  made.set(family, spelled);
  return spelled;
}

/** Without its letter case. */
export const fold = (text: string): string => text.toLowerCase();

function* spellings(row: UnitRow, prefix: string): Generator<[text: string, sure: boolean]> {
  const { name, signs } = prefixTable[prefix] ?? { name: '', signs: [] };
  // Nobody mistakes the small m of `mΩ`; in `mohm` it is as often a mega.
  const unsure = prefix === 'm' && row.prefixes.includes('M');
  for (const sign of [prefix, ...signs]) {
    for (const unit of [row.symbol, ...(row.signs ?? [])])
      yield [sign + unit, !(unsure && /^[a-z]/i.test(unit))];
  }
  for (const unit of row.names) {
    yield [name + unit, true];
    yield [`${name + unit}s`, true];
    // kilohm, megohm
    if (name !== '' && unit.startsWith('o')) {
      yield [name.slice(0, -1) + unit, true];
      yield [`${name.slice(0, -1) + unit}s`, true];
    }
  }
}
