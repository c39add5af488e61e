import type { SettingValue } from '../model/setting.ts';
import { compareQuantities } from '../quantity/index.ts';

/** Whether two values of a setting are one: 66000 kHz is 66 MHz. */
export function sameValue(a: SettingValue, b: SettingValue): boolean {
  if (typeof a === 'string' || typeof b === 'string') return a === b;
  return compareQuantities(a, b) === 0;
}
