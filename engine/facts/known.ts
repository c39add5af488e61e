import type { BoardCondition } from '../model/compiled-tree.ts';
import type { ReadSettings } from './read-settings.ts';

/** What readings are read with: all that they can name besides each other. */
export interface Known extends ReadSettings {
  readonly conditions: readonly BoardCondition[];
  /** The closed list; null where there is none. */
  readonly tools: readonly string[] | null;
  /** Minutes of a reading that gives none. */
  readonly minutes: number;
}
