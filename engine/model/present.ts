import type { StoredQuantity } from './exact.ts';
import type { SettingValue } from './setting.ts';

/** The present values of settings. Null: asked, and not known. */
export type SettingValues = ReadonlyMap<string, SettingValue | null>;

/** What a known-good board shows in a reading, and where that is known from. */
export interface Twin {
  readonly value: StoredQuantity;
  readonly from: 'this job' | 'board sheet' | 'usual';
  /** How far it can lie from what the instrument showed, where that is known. */
  readonly plusMinus?: StoredQuantity;
}

/** What readings are judged by now. */
export interface Present {
  readonly settings: SettingValues;
  /** By reading; a reading's own `usual` is the last resort and is not among them. */
  readonly twins: ReadonlyMap<string, Twin>;
}
