import type { Span } from './span.ts';

/** What is wrong inside one short text (a quantity, a formula, a scale): `from` and `to` count
 *  UTF-16 units of that text. The compiler moves them to their place in the file. */
export type TextProblem = {
  readonly from: number;
  readonly to: number;
  /** Another place that belongs to it: the other of two operands. */
  readonly related?: Span;
} & TextProblemFacts;

export type TextProblemFacts =
  | { readonly code: 'not-a-quantity'; readonly text: string; readonly near: string | null }
  | { readonly code: 'unknown-unit'; readonly unit: string; readonly near: string | null }
  /** A quantity of another kind than the reading's: volts for hertz, Vrms for Vpp. */
  | { readonly code: 'wrong-unit'; readonly unit: string; readonly expected: string }
  /** Files use the decimal point. */
  | { readonly code: 'decimal-comma'; readonly text: string; readonly instead: string }
  | { readonly code: 'scale-shape'; readonly expected: string; readonly found: string }
  | { readonly code: 'expect-shape'; readonly found: string }
  /** ± in per cent of a percentage, of zero or of °C. */
  | {
      readonly code: 'tolerance-of';
      readonly what: 'percent' | 'zero' | 'temperature';
      readonly instead: string | null;
    }
  | { readonly code: 'no-tolerance'; readonly nominal: string }
  | {
      readonly code: 'limits-order';
      readonly lower: string;
      readonly upper: string;
      readonly when: string | null;
    }
  | { readonly code: 'same-band-twice'; readonly band: string }
  | { readonly code: 'formula-syntax'; readonly expected: string; readonly found: string }
  /** Two operands as they are written, and the units they are in. */
  | {
      readonly code: 'unlike-units';
      readonly left: string;
      readonly right: string;
      readonly leftText: string;
      readonly rightText: string;
    }
  | { readonly code: 'unknown-name'; readonly name: string; readonly near: readonly string[] }
  | { readonly code: 'unknown-function'; readonly name: string; readonly near: readonly string[] }
  /** A setting with options in a formula. */
  | { readonly code: 'not-a-number'; readonly name: string }
  | { readonly code: 'division-by-zero'; readonly when: string | null }
  /** A key of `codes` that is no code; `digits` is how many the others have. */
  | { readonly code: 'code-shape'; readonly found: string; readonly digits: number | null }
  | { readonly code: 'code-overlap'; readonly found: string; readonly other: string }
  /** A key of `beeps` that is no beep pattern. */
  | { readonly code: 'beep-shape'; readonly found: string }
  /** The same pattern in two rows, perhaps in two ways of writing. */
  | { readonly code: 'beep-twice'; readonly found: string; readonly other: string };

/** A value, or everything that keeps the text from having one. */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly TextProblem[] };
