import type { StoredQuantity } from './exact.ts';
import type { Option } from './reading.ts';

/** A value that this board has now and that readings are judged by. */
export type Setting =
  | {
      readonly kind: 'quantity';
      readonly id: string;
      readonly is: string;
      readonly unit: string;
      readonly usual: StoredQuantity | null;
    }
  | {
      readonly kind: 'options';
      readonly id: string;
      readonly is: string;
      readonly options: readonly Option[];
      readonly usual: string | null;
    };

/** The present value of a setting: a quantity, or the name of an option. */
export type SettingValue = StoredQuantity | string;
