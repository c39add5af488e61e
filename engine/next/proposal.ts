import type { Reading } from '../model/reading.ts';
import type { Check } from './check.ts';

/** A check that is worth taking now. */
export interface Proposal {
  readonly check: Check;
  /** What it is expected to tell of the suspects, in bits. */
  readonly bits: number;
  /** Bits for each minute, looking one check further where that was done. */
  readonly rate: number;
  /** The reading that it is taken for where that counts for more: it has to be seen before that one. */
  readonly opens?: Reading;
  /** How likely each of its bands is, likeliest first. */
  readonly bands: readonly { readonly band: string; readonly share: number }[];
  /** The suspects that it would move most, and what each makes it show. Places in the belief's hypotheses. */
  readonly parts: readonly { readonly hypothesis: number; readonly band: string }[];
}

export interface Proposals {
  /** Best first. */
  readonly ranked: readonly Proposal[];
  /** Expected minutes until one suspect is left (or several that no check tells apart) when the best is always taken. */
  readonly minutesLeft: number;
  /** False: the search for that was cut short, and it is at least so many. */
  readonly exact: boolean;
}
