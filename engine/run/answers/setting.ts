import { parsePositions, settingAt, suitsSetting } from '../../board/index.ts';
import type { CompiledBoard } from '../../model/compiled-board.ts';
import type { Taken } from '../../model/refusal.ts';
import type { Setting, SettingValue } from '../../model/setting.ts';
import { readTyped } from '../../quantity/index.ts';
import { readOption, settingText } from '../../scale/index.ts';
import type { Session } from '../session.ts';
import { type Answering, happened, refused } from './answering.ts';

const kinds = { noted: 'set', altered: 'altered', corrected: 'corrected' } as const;

export const setting: Answering<'setting'> = (session, { setting: id, typed, how }) => {
  const found = settingOf(session, id);
  if (!found.ok) return found;
  const value = understand(session, found.value, typed);
  if (!value.ok) return value;
  const noted = session.settings.has(id);
  if (how === 'noted' && noted) {
    return refused(`"${id}" is noted already: say whether the board was altered or the note was wrong`);
  }
  if (how !== 'noted' && !noted) return refused(`"${id}" has not been noted yet`);
  return happened({ kind: kinds[how], setting: id, typed, value: value.value });
};

export const settingUnknown: Answering<'setting-unknown'> = (session, { setting: id }) => {
  const found = settingOf(session, id);
  if (!found.ok) return found;
  return session.settings.has(id)
    ? refused(`"${id}" is noted already`)
    : happened({ kind: 'set', setting: id, typed: '', value: null });
};

function settingOf(session: Session, id: string): Taken<Setting> {
  const found = session.loaded.settings.get(id);
  return found === undefined
    ? refused(`This tree has no setting "${id}"`, [...session.loaded.settings.keys()])
    : { ok: true, value: found };
}

/** A value as it is typed, or the jumper positions that make it. */
function understand({ board }: Session, found: Setting, typed: string): Taken<SettingValue> {
  const value = readValue(found, typed);
  if (value.ok || board === null || !board.tables.some((table) => table.setting === found.id)) return value;
  const positions = parsePositions(board, typed);
  if (positions.ok) return suiting(found, settingAt(board, found.id, positions.value));
  if (namesAJumper(board, typed)) return positions;
  const offers = [...value.refusal.offers, ...positions.refusal.offers];
  const jumpers = board.jumpers.map(({ id }) => id).join(', ');
  return refused(`${value.refusal.text}. The positions of ${jumpers} would do as well`, offers);
}

/** A sheet is written for many trees: its value may be none of this one's. */
const suiting = (found: Setting, value: Taken<SettingValue>): Taken<SettingValue> =>
  !value.ok || suitsSetting(found, value.value)
    ? value
    : refused(
        `The jumper table makes ${settingText(value.value)}, which is no value of "${found.id}" in this tree`,
      );

const namesAJumper = ({ jumpers }: CompiledBoard, typed: string): boolean =>
  jumpers.some(({ id }) => typed.toLowerCase().includes(id.toLowerCase()));

function readValue(found: Setting, typed: string): Taken<SettingValue> {
  if (found.kind === 'options') return readOption(found.options, typed);
  const read = readTyped(typed, { unit: found.unit, allowNone: false });
  if (!read.ok) return read;
  const { understood, mark } = read.value;
  return understood.kind === 'quantity' && mark === null
    ? { ok: true, value: understood.quantity }
    : refused(`"${typed}" is not one value: a setting is a single quantity`);
}
