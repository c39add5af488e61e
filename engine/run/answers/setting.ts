import type { Taken } from '../../model/refusal.ts';
import type { Setting, SettingValue } from '../../model/setting.ts';
import { readTyped } from '../../quantity/index.ts';
import { readOption } from '../../scale/index.ts';
import type { Session } from '../session.ts';
import { type Answering, happened, refused } from './answering.ts';

const kinds = { noted: 'set', altered: 'altered', corrected: 'corrected' } as const;

export const setting: Answering<'setting'> = (session, { setting: id, typed, how }) => {
  const found = settingOf(session, id);
  if (!found.ok) return found;
  const value = understand(found.value, typed);
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

function understand(found: Setting, typed: string): Taken<SettingValue> {
  if (found.kind === 'options') return readOption(found.options, typed);
  const read = readTyped(typed, { unit: found.unit, allowNone: false });
  if (!read.ok) return read;
  const { understood, mark } = read.value;
  return understood.kind === 'quantity' && mark === null
    ? { ok: true, value: understood.quantity }
    : refused(`"${typed}" is not one value: a setting is a single quantity`);
}
