import type { BoardState, Part } from '../model/entry.ts';
import type { DecisionRule } from '../model/instrument.ts';

/** What a technician says, before it is understood. Screens make these; the terminal and job
 *  scripts write them as text (see `parse-answer.ts`). */
export type Answer =
  | { readonly say: 'open'; readonly board: string; readonly owner: string; readonly story: string }
  | {
      readonly say: 'setting';
      readonly setting: string;
      readonly typed: string;
      readonly how: 'noted' | 'altered' | 'corrected';
    }
  /** The setting is not known. */
  | { readonly say: 'setting-unknown'; readonly setting: string }
  | { readonly say: 'symptom'; readonly same: boolean }
  | { readonly say: 'acknowledge' }
  /** `reading` null means the one that is asked. */
  | {
      readonly say: 'value';
      readonly reading: string | null;
      readonly typed: string;
      readonly board: BoardState;
    }
  | { readonly say: 'confirm' }
  | { readonly say: 'cannot-read'; readonly why: string }
  | {
      readonly say: 'retake';
      readonly of: number;
      readonly typed: string;
      readonly manner: 'correction' | 'again';
      readonly board: BoardState;
    }
  | { readonly say: 'strike'; readonly of: number; readonly why: string }
  | { readonly say: 'assume'; readonly target: string }
  /** The same reading on a known-good board. */
  | { readonly say: 'twin'; readonly reading: string; readonly typed: string }
  /** What is at the bench; null leaves a part as it was. Instruments are one line each. */
  | {
      readonly say: 'equip';
      readonly instruments: readonly string[] | null;
      readonly lacking: readonly string[] | null;
      readonly rule: DecisionRule | null;
    }
  /** The board is in these conditions now; null means those that are asked for. */
  | { readonly say: 'arrange'; readonly conditions: Readonly<Record<string, string>> | null }
  /** On with it, although what must be seen first was not. */
  | { readonly say: 'override'; readonly why: string }
  /** The board runs all of a sudden. */
  | { readonly say: 'runs'; readonly touched: string }
  /** What was touched last was undone, and the board did this. */
  | { readonly say: 'undone'; readonly undone: 'not tried' | 'fails again' | 'still runs' }
  | { readonly say: 'wait' }
  /** A task is done, or the procedure is begun. */
  | { readonly say: 'done' }
  | { readonly say: 'hand-over' }
  /** On with a newer version of the tree; null means the newest at hand. */
  | { readonly say: 'newer'; readonly digest: string | null }
  | { readonly say: 'remedied'; readonly which: string; readonly parts: readonly Part[] }
  | { readonly say: 'decline'; readonly why: string }
  | { readonly say: 'back' }
  | { readonly say: 'go'; readonly section: string }
  /** Off to a check beside the walk, and back to where that was left. */
  | { readonly say: 'detour'; readonly section: string; readonly reading: string }
  | { readonly say: 'return' }
  | { readonly say: 'note'; readonly text: string }
  | { readonly say: 'todo'; readonly text: string }
  | { readonly say: 'todo-done'; readonly of: number }
  | { readonly say: 'resume'; readonly same: boolean }
  | { readonly say: 'close'; readonly mended: boolean; readonly note: string }
  | { readonly say: 'reopen'; readonly why: string };
