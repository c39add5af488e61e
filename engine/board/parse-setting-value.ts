import type { CompiledBoard } from '../model/compiled-board.ts';
import type { StoredQuantity } from '../model/exact.ts';
import type { Taken } from '../model/refusal.ts';
import type { SettingValue } from '../model/setting.ts';
import { fromStored, readTyped } from '../quantity/index.ts';
import { readOption, settingText } from '../scale/index.ts';
import { sameValue } from './same-value.ts';

/** The value that somebody wants a setting to have, as it is typed: in the unit of the jumper table, or one of its words.
 *
 *  People say 66 MHz where a table says 66.6 MHz: a value of the table that is not 1 % away, and the only such one, is meant. */
export function parseSettingValue(
  { tables }: Pick<CompiledBoard, 'tables'>,
  setting: string,
  typed: string,
): Taken<SettingValue> {
  const values = tables.flatMap((table) => (table.setting === setting ? table.rows : []));
  const [first] = values.map(({ value }) => value);
  if (first === undefined) return refuse(`This board sheet has no jumper table for "${setting}"`, []);
  if (typeof first === 'string') {
    const names = [...new Set(values.map(({ value }) => settingText(value)))];
    return readOption(
      names.map((name) => ({ name, means: null })),
      typed,
    );
  }
  const read = readTyped(typed, { unit: first.unit, allowNone: false });
  if (!read.ok) return read;
  const { understood } = read.value;
  return understood.kind === 'quantity'
    ? { ok: true, value: meant(values, understood.quantity) }
    : refuse(`"${typed}" is not one value`, [settingText(first)]);
}

function meant(rows: readonly { readonly value: SettingValue }[], typed: StoredQuantity): StoredQuantity {
  const wanted = fromStored(typed);
  const near = rows
    .map(({ value }) => value)
    .filter((value) => typeof value !== 'string')
    .filter((value) => fromStored(value).sub(wanted).abs().mul(100).lt(wanted.abs()));
  const [first] = near;
  return first !== undefined && near.every((value) => sameValue(value, first)) ? first : typed;
}

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
