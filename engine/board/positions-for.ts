import type { CompiledBoard } from '../model/compiled-board.ts';
import type { Taken } from '../model/refusal.ts';
import type { SettingValue } from '../model/setting.ts';
import { settingText } from '../scale/setting-text.ts';
import { jumpersOf } from './jumper-rows.ts';
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
  const values = [...new Set(table.rows.map((row) => settingText(row.value)))];
  return refuse(`No position of the jumpers makes "${setting}" ${settingText(value)}`, values);
}

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
