import type { SettingValue } from '../../model/setting.ts';
import { settingsOf } from '../../scale/index.ts';
import type { Session } from '../session.ts';
import type { Happening } from './happening.ts';

const withSetting = (session: Session, setting: string, value: SettingValue | null): Session => ({
  ...session,
  settings: new Map(session.settings).set(setting, value),
});

export const set: Happening<'set'> = (session, { setting, value }) => withSetting(session, setting, value);

/** The board is another one now: what was judged by this setting is kept, but it is no evidence. */
export const altered: Happening<'altered'> = (session, { setting, value }) => {
  const rests = (reading: string): boolean => {
    const found = session.loaded.readings.get(reading);
    return found !== undefined && settingsOf(found).includes(setting);
  };
  const history = new Map(
    [...session.history].map(([reading, words]) => [
      reading,
      rests(reading) ? words.map((word) => ({ ...word, stale: true })) : words,
    ]),
  );
  const taken = new Map([...session.position.taken].filter(([reading]) => !rests(reading)));
  return withSetting({ ...session, history, position: { ...session.position, taken } }, setting, value);
};
