import type { FactsContext } from '../../facts/facts-context.ts';
import { type RawTable, tableOf, textOf } from '../../facts/raw.ts';
import type { Jumper, JumperTable } from '../../model/compiled-board.ts';
import type { Path } from '../../model/front-matter.ts';
import type { Setting } from '../../model/setting.ts';
import { settingText } from '../../scale/index.ts';
import { type JumperRow, jumpersOf } from '../jumper-rows.ts';
import { positionsText } from '../positions-text.ts';
import { sameValue } from '../same-value.ts';
import { uncoveredPositions } from '../uncovered-positions.ts';
import { checkSharedName } from './check-shared-name.ts';
import { readPositions } from './read-positions.ts';
import { readSettingValue } from './read-setting-value.ts';

const mostRows = 256;

/** Which positions make a setting what it is. */
export function readTables(
  data: RawTable,
  jumpers: readonly Jumper[],
  shared: readonly Setting[],
  context: FactsContext,
): readonly JumperTable[] {
  const tables = tableOf(data.tables);
  return context.keysOf(['tables'], tables).flatMap((setting): readonly JumperTable[] => {
    const path = ['tables', setting];
    const raw = tableOf(tables[setting]);
    checkSharedName(setting, 'setting', shared, path, context);
    const count = Object.keys(raw).length;
    if (count > mostRows) {
      context.atKey(path, { code: 'jumper-table-large', rows: count, limit: mostRows });
      return [];
    }
    const declared = shared.find(({ id }) => id === setting);
    const written = context.keysOf(path, raw).map((key) => {
      const place = [...path, key];
      const text = textOf(raw[key]);
      const at = readPositions(key, jumpers, place, context);
      const value = text === null ? null : readSettingValue(text, declared, place, context);
      return { path: place, at, value };
    });
    const rows = written.flatMap(({ path: place, at, value }): readonly WrittenRow[] =>
      at === null || value === null ? [] : [{ path: place, at, value }],
    );
    if (rows.length === 0) return [];
    checkOverlaps(setting, rows, jumpers, context);
    const table = { setting, rows: rows.map(({ at, value }) => ({ at, value })) };
    if (rows.length === written.length) checkCovered(table, jumpers, path, context);
    return [table];
  });
}

interface WrittenRow extends JumperRow {
  readonly path: Path;
}

/** Rows that hold for the same positions and say different things: each is told once, with the first that it contradicts. */
function checkOverlaps(
  setting: string,
  rows: readonly WrittenRow[],
  jumpers: readonly Jumper[],
  context: FactsContext,
): void {
  for (const [index, row] of rows.entries()) {
    const other = rows
      .slice(0, index)
      .find((above) => meet(above, row) && !sameValue(above.value, row.value));
    if (other === undefined) continue;
    const positions = positionsText({ ...other.at, ...row.at }, jumpers);
    const [value, otherValue] = [settingText(row.value), settingText(other.value)];
    const facts = { code: 'positions-overlap', setting, positions, value, other: otherValue } as const;
    context.atKey(row.path, facts, { related: context.spanOf(other.path, 'key') });
  }
}

/** Whether there are positions for which both rows hold. */
const meet = (a: JumperRow, b: JumperRow): boolean =>
  Object.keys(a.at).every((jumper) => b.at[jumper] === undefined || b.at[jumper] === a.at[jumper]);

function checkCovered(
  table: JumperTable,
  jumpers: readonly Jumper[],
  path: Path,
  context: FactsContext,
): void {
  const deciding = jumpersOf(table);
  const left = uncoveredPositions(
    jumpers.filter(({ id }) => deciding.includes(id)),
    table.rows,
  );
  if (left === null || left.example === null) return;
  const example = positionsText(left.example, jumpers);
  context.atKey(path, {
    code: 'positions-uncovered',
    setting: table.setting,
    example,
    more: left.count - 1,
  });
}
