import type { CompiledBoard } from '../model/compiled-board.ts';
import type { Taken } from '../model/refusal.ts';
import type { SettingValue } from '../model/setting.ts';
import { fromStored } from '../quantity/index.ts';
import { settingText } from '../scale/setting-text.ts';
import { type JumperRow, jumpersOf } from './jumper-rows.ts';
import type { Positions } from './positions-text.ts';
import { sameValue } from './same-value.ts';

/** A way to get a value: where jumpers must sit, and which of the table may sit anywhere. */
export interface WayToSet {
  readonly at: Positions;
  readonly anywhere: readonly string[];
}

/** Every row that makes a setting this value. */
export function positionsFor(
  board: Pick<CompiledBoard, 'tables'>,
  setting: string,
  value: SettingValue,
): Taken<readonly [WayToSet, ...WayToSet[]]> {
  const table = board.tables.find((each) => each.setting === setting);
  if (table === undefined) return refuse(`This board sheet has no jumper table for "${setting}"`, []);
  const deciding = jumpersOf(table);
  const [first, ...more] = table.rows
    .filter((row) => sameValue(row.value, value))
    .map(({ at }) => ({ at, anywhere: deciding.filter((jumper) => !Object.hasOwn(at, jumper)) }));
  if (first !== undefined) return { ok: true, value: [first, ...more] };
  return refuse(`No position of the jumpers makes "${setting}" ${settingText(value)}`, [
    ...new Set(nearestFirst(table.rows, value).map((row) => settingText(row.value))),
  ]);
}

const nearestFirst = (rows: readonly JumperRow[], value: SettingValue): readonly JumperRow[] =>
  rows.toSorted((a, b) => distance(a.value, value) - distance(b.value, value));

const distance = (a: SettingValue, b: SettingValue): number =>
  typeof a === 'string' || typeof b === 'string' ? 0 : fromStored(a).sub(fromStored(b)).abs().valueOf();

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
