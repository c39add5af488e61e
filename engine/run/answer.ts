import type { BoardState, Part } from '../model/entry.ts';

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
  | { readonly say: 'wait' }
  | { readonly say: 'done' }
  | { readonly say: 'remedied'; readonly which: string; readonly parts: readonly Part[] }
  | { readonly say: 'decline'; readonly why: string }
  | { readonly say: 'back' }
  | { readonly say: 'go'; readonly section: string }
  | { readonly say: 'note'; readonly text: string }
  | { readonly say: 'todo'; readonly text: string }
  | { readonly say: 'todo-done'; readonly of: number }
  | { readonly say: 'resume'; readonly same: boolean }
  | { readonly say: 'close'; readonly mended: boolean; readonly note: string }
  | { readonly say: 'reopen'; readonly why: string };
