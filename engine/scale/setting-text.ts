import type { SettingValue } from '../model/setting.ts';
import { printQuantity } from '../quantity/index.ts';

/** The value of a setting as it is shown: `66 MHz`, or the name of an option. */
export const settingText = (value: SettingValue): string =>
  typeof value === 'string' ? value : printQuantity(value);
