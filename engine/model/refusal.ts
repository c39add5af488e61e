/** Why something a technician typed was not taken: what was not understood, and what would be. */
export interface Refusal {
  /** One sentence without a final full stop. */
  readonly text: string;
  /** Texts that would be understood, nearest first. */
  readonly offers: readonly string[];
}

export type Taken<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusal: Refusal };
