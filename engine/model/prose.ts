import type { Formula } from './formula.ts';

/** Text inside a paragraph. */
export type Inline =
  | { readonly type: 'text'; readonly value: string }
  | { readonly type: 'code'; readonly value: string }
  /** A code span that names a setting or computes with one: shown with its present value. */
  | { readonly type: 'value'; readonly written: string; readonly formula: Formula }
  | { readonly type: 'emphasis' | 'strong'; readonly children: readonly Inline[] }
  | { readonly type: 'link'; readonly url: string; readonly children: readonly Inline[] }
  | { readonly type: 'image'; readonly url: string; readonly alt: string }
  | { readonly type: 'break' };

/** A block of prose: the part of CommonMark and its tables that an instruction needs. */
export type Block =
  | { readonly type: 'paragraph'; readonly children: readonly Inline[] }
  | { readonly type: 'heading'; readonly depth: number; readonly children: readonly Inline[] }
  | {
      readonly type: 'list';
      readonly ordered: boolean;
      readonly start: number;
      readonly items: readonly (readonly Block[])[];
    }
  | { readonly type: 'quote'; readonly children: readonly Block[] }
  | { readonly type: 'preformatted'; readonly value: string }
  | {
      readonly type: 'table';
      readonly align: readonly ('left' | 'right' | 'center' | null)[];
      readonly rows: readonly (readonly (readonly Inline[])[])[];
    }
  | { readonly type: 'rule' };

/** The signal words of ANSI Z535.6 and ISO 3864, gravest first. */
export const signalWords = ['danger', 'warning', 'caution', 'notice'] as const;
export type SignalWord = (typeof signalWords)[number];

/** A hazard and what to do about it. A danger or a warning is acknowledged before the work. */
export interface Hazard {
  readonly word: SignalWord;
  readonly blocks: readonly Block[];
  /** SHA-256 of the words, in hexadecimal: what was acknowledged. */
  readonly digest: string;
}
