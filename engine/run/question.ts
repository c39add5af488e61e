import type { Settler } from '../doubt/index.ts';
import type { CompiledTree, Given } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import type { Hazard } from '../model/prose.ts';
import type { Need, Reading } from '../model/reading.ts';
import type {
  CallSection,
  CheckSection,
  FaultSection,
  HandOverSection,
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
  /** A tool it asks for that the technician does not have: `cannot read` alone says so. */
  readonly lacks: string | null;
  /** A limit rests on what a known-good board shows, and nobody knows that yet. */
  readonly twinWanted: boolean;
  /** How many tries a proof asks of a reading that counts them. */
  readonly tries: number | null;
}

/** One condition of the board that is not as a reading wants it. */
export interface ConditionChange {
  readonly condition: string;
  readonly now: string;
  readonly wanted: string;
}

/** What must have been seen and was not, or was seen otherwise. */
export interface Lack {
  readonly need: Need;
  readonly reading: Reading;
  /** The latest word on it, whether it still counts or not. */
  readonly known: Known | null;
  /** What can be read right here to make up for it: the reading, or what it is computed from. */
  readonly take: readonly Reading[];
}

/** What would settle one reading that leaves several bands open. */
export interface Unsettled {
  readonly reading: Reading;
  readonly bands: readonly string[];
  /** Least trouble first; empty where nothing at hand would. */
  readonly by: readonly Settler[];
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
  /** The board has to be brought into other conditions before the reading is taken. */
  | {
      readonly ask: 'arrange';
      readonly section: CheckSection | FaultSection;
      readonly reading: Reading;
      readonly changes: readonly ConditionChange[];
      /** The last value: where it still stands, the board need not be changed for it. */
      readonly known: Known | null;
    }
  /** What must have been seen before this reading (null: before the section's work) was not. */
  | {
      readonly ask: 'held';
      readonly section: CheckSection | FaultSection | TaskSection;
      readonly reading: Reading | null;
      readonly lacking: readonly Lack[];
    }
  /** The readings lead to more than one section. */
  | {
      readonly ask: 'too-close';
      readonly section: CheckSection;
      readonly ways: readonly OpenWay[];
      readonly unsettled: readonly Unsettled[];
    }
  | { readonly ask: 'task'; readonly section: TaskSection; readonly waitingSince: string | null }
  /** A procedure is to be followed. */
  | { readonly ask: 'call'; readonly section: CallSection }
  /** The job goes on in another tree, which is null while it is not at hand. */
  | { readonly ask: 'hand-over'; readonly section: HandOverSection; readonly tree: CompiledTree | null }
  | { readonly ask: 'remedy'; readonly section: FaultSection; readonly fault: Fault; readonly remedy: Remedy }
  /** A proof failed, or the walk came back to a fault that was put aside. */
  | { readonly ask: 'aside'; readonly section: FaultSection }
  | { readonly ask: 'stop'; readonly section: StopSection }
  /** The proof is complete: the job may be closed as mended. */
  | { readonly ask: 'closing' }
  | { readonly ask: 'nothing'; readonly mended: boolean };
