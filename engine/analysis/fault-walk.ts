/** How a walk under a fault ends without arriving at it. */
export type AstrayHow =
  /** At the section of another fault. */
  | 'other-fault'
  | 'stop'
  /** In another tree. */
  | 'hand-over'
  /** It comes back to where it was with nothing changed, and goes round for ever. */
  | 'round'
  /** Something may not be done or taken: see `held`. */
  | 'held'
  /** At a check without an outcome for what it shows. */
  | 'nowhere';

/** Why a walk may not go on. */
export type Held =
  /** What must have been seen before comes out otherwise under this fault. */
  | { readonly kind: 'only-if'; readonly reading: string; readonly band: string }
  /** The board is in another condition than a reading is taken in. */
  | { readonly kind: 'when'; readonly reading: string; readonly condition: string; readonly value: string };

/** Walks that do not arrive, of those that end alike the heaviest. */
export interface Astray {
  readonly how: AstrayHow;
  /** In which share of the cases walks end so. */
  readonly share: number;
  /** Section ids from the first to the last; of a walk that goes round the last is the one it comes back to. */
  readonly path: readonly string[];
  /** The last section of the path from which the fault could still have been reached. */
  readonly parted: string;
  /** What decided there. */
  readonly by: readonly { readonly name: string; readonly band: string }[];
  readonly held: Held | null;
}

/** Where the walks of a board with one fault lead, over all that the fault can show and all kinds of boards. */
export interface FaultWalk {
  readonly fault: string;
  /** The share that arrives at the fault's section, from 0 to 1. Settings with options count each option alike. */
  readonly arrives: number;
  /** The share that was not followed to its end. */
  readonly notFollowed: number;
  /** Heaviest first. */
  readonly astray: readonly Astray[];
}
