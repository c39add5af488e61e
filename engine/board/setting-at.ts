import type { CompiledBoard, JumperTable } from '../model/compiled-board.ts';
import type { Taken } from '../model/refusal.ts';
import type { SettingValue } from '../model/setting.ts';
import { settingText } from '../scale/setting-text.ts';
import { holds, jumpersOf, mayHold } from './jumper-rows.ts';
import { type Positions, positionsText } from './positions-text.ts';
import { sameValue } from './same-value.ts';
import { uncoveredPositions } from './uncovered-positions.ts';

type Jumpers = Pick<CompiledBoard, 'jumpers' | 'tables'>;

/** What these positions make of a setting. Refused where they make nothing that the sheet knows of, or where a
 *  jumper is not named that would decide. */
export function settingAt(board: Jumpers, setting: string, positions: Positions): Taken<SettingValue> {
  const table = board.tables.find((each) => each.setting === setting);
  if (table === undefined) return refuse(`This board sheet has no jumper table for "${setting}"`, []);
  const found = table.rows.find((row) => holds(row, positions));
  if (found !== undefined) return { ok: true, value: found.value };
  const possible = table.rows.filter((row) => mayHold(row, positions));
  const [first] = possible;
  if (first === undefined) return unknown(board, table, positions);
  return possible.every(({ value }) => sameValue(value, first.value)) && coverAll(board, possible, positions)
    ? { ok: true, value: first.value }
    : undecided(board, table, positions);
}

/** Whether the rows hold wherever the jumpers sit that are not named. */
function coverAll({ jumpers }: Jumpers, rows: JumperTable['rows'], positions: Positions): boolean {
  const free = jumpers.filter(({ id }) => !Object.hasOwn(positions, id));
  const open = rows.map(({ at }) => ({
    at: Object.fromEntries(Object.entries(at).filter(([jumper]) => !Object.hasOwn(positions, jumper))),
  }));
  return uncoveredPositions(free, open)?.count === 0;
}

/** `Where does JP13 sit? JP12 2-3 makes 60 MHz or 66 MHz` */
function undecided(board: Jumpers, table: JumperTable, positions: Positions): Taken<never> {
  const possible = table.rows.filter((row) => mayHold(row, positions));
  const missing = new Set(
    possible.flatMap(({ at }) => Object.keys(at).filter((jumper) => !Object.hasOwn(positions, jumper))),
  );
  const asked = board.jumpers.map(({ id }) => id).filter((id) => missing.has(id));
  const named = positionsText(within(table, positions), board.jumpers);
  const values = [...new Set(possible.map(({ value }) => settingText(value)))];
  return refuse(
    `Where ${asked.length === 1 ? 'does' : 'do'} ${listed(asked, 'and')} sit? ${named === '' ? 'The table' : named} makes ${listed(values.slice(0, mostOffers), 'or')}`,
    possible.map(({ at }) => positionsText({ ...positions, ...at }, board.jumpers)),
  );
}

/** No row holds: the nearest rows are offered. */
function unknown(board: Jumpers, table: JumperTable, positions: Positions): Taken<never> {
  const near = table.rows
    .map(({ at }) => ({ at, far: moves(at, positions) }))
    .toSorted((a, b) => a.far - b.far)
    .filter(({ far }, _, [nearest]) => far === nearest?.far);
  return refuse(
    `${positionsText(within(table, positions), board.jumpers)} is in no row of the jumper table: it sets nothing that anybody knows of`,
    near.map(({ at }) => positionsText({ ...positions, ...at }, board.jumpers)),
  );
}

/** The positions that the table speaks of. */
function within(table: JumperTable, positions: Positions): Positions {
  const deciding = jumpersOf(table);
  return Object.fromEntries(Object.entries(positions).filter(([jumper]) => deciding.includes(jumper)));
}

const moves = (at: Positions, positions: Positions): number =>
  Object.keys(at).filter((jumper) => positions[jumper] !== at[jumper]).length;

const mostOffers = 4;

const listed = (names: readonly string[], word: 'and' | 'or'): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} ${word} ${names.at(-1)}`;

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers: [...new Set(offers)].slice(0, mostOffers) },
});
