import type { Given } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import type { Hazard } from '../model/prose.ts';
import type { Reading } from '../model/reading.ts';
import type {
  CheckSection,
  FaultSection,
  Remedy,
  Section,
  StopSection,
  TaskSection,
} from '../model/section.ts';
import type { Setting } from '../model/setting.ts';
import type { Known } from './known.ts';

/** A reading to be taken, and its place in the row. */
export interface ReadingQuestion {
  readonly ask: 'reading';
  readonly section: CheckSection | FaultSection;
  readonly reading: Reading;
  /** `proof` after a remedy, else `check`. */
  readonly purpose: 'check' | 'proof';
  /** Which of how many, counted from 1. */
  readonly place: { readonly at: number; readonly of: number };
  /** The last value, offered for one-key confirmation. */
  readonly known: Known | null;
}

/** A way on that the readings leave open. */
export interface OpenWay {
  readonly target: string;
  /** One combination of bands that leads there. */
  readonly bands: Readonly<Record<string, string>>;
}

/** What a session waits for. Screens and terminals draw this and nothing else. */
export type Question =
  | { readonly ask: 'opening' }
  | { readonly ask: 'setting'; readonly setting: Setting }
  | { readonly ask: 'symptom'; readonly given: readonly Given[] }
  | {
      readonly ask: 'acknowledgement';
      readonly section: Section | null;
      readonly hazards: readonly Hazard[];
      readonly words: string;
    }
  | ReadingQuestion
  /** The readings lead to more than one section. */
  | { readonly ask: 'too-close'; readonly section: CheckSection; readonly ways: readonly OpenWay[] }
  | { readonly ask: 'task'; readonly section: TaskSection; readonly waitingSince: string | null }
  | { readonly ask: 'remedy'; readonly section: FaultSection; readonly fault: Fault; readonly remedy: Remedy }
  /** A proof failed, or the walk came back to a fault that was put aside. */
  | { readonly ask: 'aside'; readonly section: FaultSection }
  | { readonly ask: 'stop'; readonly section: StopSection }
  /** The proof is complete: the job may be closed as mended. */
  | { readonly ask: 'closing' }
  | { readonly ask: 'nothing'; readonly mended: boolean };
