import {
  type Positions,
  parsePositions,
  positionsFor,
  positionsText,
  type WayToSet,
} from '../../engine/board/index.ts';
import type { CompiledBoard, Jumper } from '../../engine/model/compiled-board.ts';
import type { Setting } from '../../engine/model/setting.ts';
import type { Session } from '../../engine/run/index.ts';
import { settingText } from '../../engine/scale/index.ts';
import { type SettingHow, settingValue } from './setting-value.ts';

/** One row of the board's own table. */
interface TableRow {
  readonly value: string;
  readonly positions: string;
}

/** The jumpers that make a setting, as the text in the field has them. */
export interface Jumpers {
  readonly jumpers: readonly Jumper[];
  /** Where they sit, as far as the text says. */
  readonly at: Positions;
  /** Where they would have to sit for the value in the field; none where the text names positions itself. */
  readonly ways: readonly WayToSet[];
  /** What the text makes: `66.6 MHz`; null while it makes nothing. */
  readonly makes: string | null;
  readonly rows: readonly TableRow[];
}

/** Null where the board's sheet has no table for this setting. */
export function jumpersOf(
  session: Session,
  setting: Setting,
  typed: string,
  how: SettingHow,
): Jumpers | null {
  const { board } = session;
  const table = board?.tables.find((each) => each.setting === setting.id);
  if (board === null || table === undefined) return null;
  const deciding = new Set(table.rows.flatMap(({ at }) => Object.keys(at)));
  const at = positionsIn(board, typed);
  const made = settingValue(session, setting, typed, how);
  const ways = made.ok && at === null ? positionsFor(board, setting.id, made.value) : null;
  return {
    jumpers: board.jumpers.filter(({ id }) => deciding.has(id)),
    at: at ?? {},
    ways: ways?.ok ? ways.value : [],
    makes: made.ok ? settingText(made.value) : null,
    rows: table.rows.map((row) => ({
      value: settingText(row.value),
      positions: positionsText(row.at, board.jumpers),
    })),
  };
}

function positionsIn(board: CompiledBoard, typed: string): Positions | null {
  const read = parsePositions(board, typed);
  return read.ok ? read.value : null;
}

/** The field's text with one jumper put elsewhere, or taken out where it sat there already. */
export function moved({ jumpers, at }: Jumpers, jumper: string, position: string): string {
  const { [jumper]: before, ...others } = at;
  return positionsText(before === position ? others : { ...others, [jumper]: position }, jumpers);
}

/** `JP12 2-3, JP13 1-2; JP14 anywhere` */
export function wayText({ jumpers }: Jumpers, { at, anywhere }: WayToSet): string {
  const free = anywhere.length === 0 ? '' : `; ${anywhere.join(', ')} anywhere`;
  return `${positionsText(at, jumpers)}${free}`;
}
