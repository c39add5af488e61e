/** How often a fault shows one band of a reading; the shares of a reading add up to 1. */
export interface Share {
  readonly band: string;
  readonly share: number;
}

/** What a fault shows in one reading. */
export interface Shows {
  readonly reading: string;
  readonly shares: readonly Share[];
}

/** A root cause. */
export interface Fault {
  readonly id: string;
  readonly is: string;
  /** Relative frequency. */
  readonly weight: number;
  readonly shows: readonly Shows[];
  /** What a reading that `shows` does not mention reads under this fault. */
  readonly rest: 'normal' | 'unknown';
  /** A fault that comes `sometimes` says nothing while the board runs. */
  readonly comes: 'always' | 'sometimes';
  readonly parts: readonly string[];
  readonly tools: readonly string[];
  /** Hands-on minutes of the remedy, where the author gave them. */
  readonly minutes: number | null;
  readonly source: string | null;
}
