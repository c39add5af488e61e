import type { Present, Twin } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import { printQuantity } from '../quantity/index.ts';
import { settingText } from './setting-text.ts';
import { inputsOf, settingsOf, usesTwin } from './settings-of.ts';
import { twinName, twinOf } from './twin-of.ts';

/** A setting, or the known-good board, that a reading is judged by, and what it is now. */
export interface Because {
  /** Setting id, or `twin`. */
  readonly setting: string;
  /** What the setting is, in the tree's words. */
  readonly is: string;
  /** `66 MHz`; null where it is not known. */
  readonly value: string | null;
}

/** @param declared the tree's settings by id */
export function expectedBecause(
  reading: Reading,
  present: Present,
  declared: ReadonlyMap<string, Setting>,
): readonly Because[] {
  const inputs = inputsOf(reading);
  const settings = settingsOf(reading).filter((name) => declared.has(name) || !inputs.includes(name));
  const because = settings.map((setting) => {
    const value = present.settings.get(setting) ?? null;
    return {
      setting,
      is: declared.get(setting)?.is ?? setting,
      value: value === null ? null : settingText(value),
    };
  });
  return usesTwin(reading) ? [...because, becauseOfTwin(reading, present)] : because;
}

const origins: Readonly<Record<Twin['from'], string>> = {
  'this job': 'The known-good board, read in this job',
  'board sheet': 'The known-good board, by the board sheet',
  usual: 'A known-good board, as usual',
};

function becauseOfTwin(reading: Reading, present: Present): Because {
  const twin = twinOf(reading, present);
  if (twin === null) return { setting: twinName, is: 'The known-good board', value: null };
  return { setting: twinName, is: origins[twin.from], value: printQuantity(twin.value) };
}
