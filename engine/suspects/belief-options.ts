import type { SettingValues } from '../model/present.ts';

/** How a tree's suspects are weighed on one board. */
export interface BeliefOptions {
  /** Where a fault has weights by board class, this one's counts. */
  readonly boardClass?: string | null;
  /** Faults that are not among the suspects: mended, or put aside. */
  readonly aside?: ReadonlySet<string>;
  /** Faults that were on this board and have been mended: what they bring along is likelier. */
  readonly mended?: ReadonlySet<string>;
  /** Two faults at once too. */
  readonly pairs?: boolean;
  /** The board's present settings, where they are not the usual ones. */
  readonly settings?: SettingValues;
}
