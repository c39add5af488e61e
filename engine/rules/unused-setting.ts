import { namesIn } from '../formula/index.ts';
import { settingsOf } from '../scale/index.ts';
import type { Rule } from './rule.ts';

/** A setting that no limit, no condition and no value in the prose rests on. */
export const unusedSetting: Rule = ({ facts, settingsUsed, placeOf, open }) => {
  if (open.has('ways')) return [];
  const computedFrom = facts.readings.flatMap(({ from }) => (from === null ? [] : namesIn(from)));
  const used = new Set([...settingsUsed, ...facts.readings.flatMap(settingsOf), ...computedFrom]);
  return facts.settings
    .filter(({ id }) => !facts.foreign.settings.has(id) && !used.has(id))
    .map(({ id }) => ({ code: 'unused-setting', setting: id, span: placeOf('settings', id) }));
};
