import type { Equipment } from './instrument.ts';
import type { Observation } from './observation.ts';
import type { SettingValue } from './setting.ts';

/** Whether the board fails while a reading is taken; faults that come and go need to know. */
export type BoardState = 'failing' | 'running';

export interface Part {
  readonly what: string;
  /** As typed, with its currency: `3.20 EUR`. */
  readonly cost: string | null;
}

/** What happened, by kind. Numbers named `of` count entries of the same job from 0. */
export type Happening =
  /** The first entry. */
  | { readonly kind: 'opened'; readonly board: string; readonly owner: string; readonly story: string }
  /** A setting as noted at the start. */
  | {
      readonly kind: 'set';
      readonly setting: string;
      readonly typed: string;
      readonly value: SettingValue | null;
    }
  /** The board was changed: readings judged by this setting go stale. */
  | {
      readonly kind: 'altered';
      readonly setting: string;
      readonly typed: string;
      readonly value: SettingValue;
    }
  /** The note was wrong: everything is judged again with the right value. */
  | {
      readonly kind: 'corrected';
      readonly setting: string;
      readonly typed: string;
      readonly value: SettingValue;
    }
  /** The board shows what the tree's symptom says, or not. */
  | { readonly kind: 'symptom'; readonly same: boolean }
  /** `words` is the digest of the hazards acknowledged; `section` is null for those above the first section. */
  | { readonly kind: 'acknowledged'; readonly section: string | null; readonly words: string }
  | {
      readonly kind: 'read';
      readonly section: string;
      readonly observation: Observation;
      readonly board: BoardState;
    }
  /** The value of entry `of` still stands. */
  | { readonly kind: 'confirmed'; readonly section: string; readonly reading: string; readonly of: number }
  | { readonly kind: 'unread'; readonly section: string; readonly reading: string; readonly why: string }
  /** An older reading taken again: `correction` replaces it, `again` adds to it. */
  | {
      readonly kind: 'retaken';
      readonly of: number;
      readonly manner: 'correction' | 'again';
      readonly observation: Observation;
      readonly board: BoardState;
    }
  /** Entry `of` is no evidence any more. */
  | { readonly kind: 'struck'; readonly of: number; readonly why: string }
  /** The same reading on a known-good board. */
  | { readonly kind: 'twin'; readonly observation: Observation }
  /** What the technician has at the bench, and how values near a limit are taken. */
  | { readonly kind: 'equipped'; readonly equipment: Equipment }
  /** Something was done although what must be seen before it was not: `reading` null means the section's work. */
  | {
      readonly kind: 'overrode';
      readonly section: string;
      readonly reading: string | null;
      readonly why: string;
    }
  /** The board was brought into other conditions outside the tree. */
  | { readonly kind: 'arranged'; readonly conditions: Readonly<Record<string, string>> }
  /** The board runs all of a sudden: what was last touched, and whether undoing that brings the fault back. */
  | {
      readonly kind: 'runs';
      readonly touched: string;
      readonly undone: 'not tried' | 'fails again' | 'still runs';
    }
  /** The job goes on with another tree of `laterTrees`: handed over to it, or moved to its newer version. */
  | { readonly kind: 'tree'; readonly digest: string; readonly why: 'handed over' | 'newer' }
  /** Too close to call: go on as if the readings were in these bands. */
  | { readonly kind: 'assumed'; readonly section: string; readonly bands: Readonly<Record<string, string>> }
  /** The waiting time of a task or a reading begins. */
  | { readonly kind: 'waiting'; readonly section: string; readonly minutes: number }
  /** A task was done, or a procedure is begun. */
  | { readonly kind: 'did'; readonly section: string }
  | {
      readonly kind: 'remedied';
      readonly section: string;
      readonly fault: string;
      /** Which pin, slot or part. */
      readonly which: string;
      readonly parts: readonly Part[];
    }
  /** The remedy was not carried out: this fault is put aside. */
  | { readonly kind: 'declined'; readonly section: string; readonly fault: string; readonly why: string }
  | { readonly kind: 'back' }
  | { readonly kind: 'went'; readonly section: string }
  /** The walk was left for another check: to take `reading` in `section`, or by way of the task `section` before it. */
  | { readonly kind: 'detoured'; readonly section: string; readonly reading: string }
  /** Back to where the walk was left for a detour. */
  | { readonly kind: 'returned' }
  | { readonly kind: 'note'; readonly text: string }
  /** Open work, and its end. */
  | { readonly kind: 'todo'; readonly text: string }
  | { readonly kind: 'todo-done'; readonly of: number }
  /** The job is taken up again on a later day. */
  | { readonly kind: 'resumed'; readonly same: boolean }
  | { readonly kind: 'closed'; readonly mended: boolean; readonly note: string }
  | { readonly kind: 'reopened'; readonly why: string };

/** One thing that happened in a job. Entries are only ever added.
 *  `at` is ISO 8601 with the bench's own offset, so that its first ten characters are the bench's day. */
export type Entry = Happening & { readonly at: string };
export type EntryKind = Entry['kind'];
