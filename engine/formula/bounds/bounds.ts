import type Fraction from 'fraction.js';

/** One end of what a value can be. */
export interface End {
  readonly value: Fraction;
  /** The end itself is one of the values. */
  readonly closed: boolean;
}

/** All that a value can be, from one end to the other; an end that is null is open without limit. */
export interface Bounds {
  readonly low: End | null;
  readonly high: End | null;
  /** Whether there is a value at all: a reading that was not taken has none, nor has a division by zero. */
  readonly value: 'sure' | 'perhaps' | 'none';
  /** Whether it rests on a reading that shows nothing: `factor` and `spread` leave it out. */
  readonly dark: 'no' | 'perhaps' | 'yes';
}

export const exactly = (value: Fraction): Bounds => {
  const end = { value, closed: true };
  return { low: end, high: end, value: 'sure', dark: 'no' };
};

/** Nothing is known of it, and perhaps there is none. */
export const anything: Bounds = { low: null, high: null, value: 'perhaps', dark: 'no' };

export const noValue: Bounds = { low: null, high: null, value: 'none', dark: 'no' };

type Known = Pick<Bounds, 'value' | 'dark'>;

/** What is known of a value that needs all of `parts`. */
export function needing(parts: readonly Known[]): Known {
  const of = <T>(values: readonly T[], worst: T, worse: T, good: T): T =>
    values.includes(worst) ? worst : values.includes(worse) ? worse : good;
  return {
    value: of(
      parts.map(({ value }) => value),
      'none',
      'perhaps',
      'sure',
    ),
    dark: of(
      parts.map(({ dark }) => dark),
      'yes',
      'perhaps',
      'no',
    ),
  };
}

/** Whether a value between the ends can be `value`. */
export function holds({ low, high }: Pick<Bounds, 'low' | 'high'>, value: Fraction): boolean {
  const above = low === null || low.value.lt(value) || (low.closed && low.value.equals(value));
  const below = high === null || high.value.gt(value) || (high.closed && high.value.equals(value));
  return above && below;
}
