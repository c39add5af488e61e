import type { Need } from './reading.ts';
import type { SettingValue } from './setting.ts';

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
  /** Relative frequency on boards of one class, where the author tells them apart. */
  readonly weights: Readonly<Record<string, number>>;
  readonly shows: readonly Shows[];
  /** What a reading that `shows` does not mention reads under this fault. */
  readonly rest: 'normal' | 'unknown';
  /** A fault that comes `sometimes` says nothing while the board runs. */
  readonly comes: 'always' | 'sometimes';
  /** Settings that this fault makes wrong: a jumper that sits elsewhere. */
  readonly sets: Readonly<Record<string, SettingValue>>;
  /** What must have been seen before its remedy may be carried out. */
  readonly onlyIf: readonly Need[];
  /** What to note of the place it was found in: `which capacitor`. */
  readonly which: string | null;
  readonly parts: readonly string[];
  readonly tools: readonly string[];
  /** Hands-on minutes of the remedy, where the author gave them. */
  readonly minutes: number | null;
  readonly source: string | null;
  /** Faults that this one brings along, and in which share of the cases: a short that kills the part behind it. */
  readonly brings?: Readonly<Record<string, number>>;
  /** What it is one of, for practice: `clock`, `contacts`. */
  readonly family?: string;
}
