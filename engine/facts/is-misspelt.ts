import { nearest } from '../names/nearest.ts';
import type { RawTable } from './raw.ts';

/** Whether a table has a key that is none, but nearly `key`: then that is told, and `key` is not missing as well. */
export const isMisspelt = (key: string, table: RawTable, known: readonly string[]): boolean =>
  Object.keys(table).some((one) => !known.includes(one) && nearest(one.slice(0, 60), [key]).length > 0);
