import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { DrillManner } from '../../../engine/practice/drill.ts';
import { codeOfPlan, planDrill, planOfCode } from '../../../engine/practice/index.ts';
import type { Ports } from '../../ports/ports.ts';
import type { TreeListing } from '../../ports/trees.ts';
import { type Loading, loading } from '../loading.ts';
import { dropDrill, type Unfinished, unfinishedDrills } from './kept-drill.ts';
import { practiceBoard } from './practice-board.ts';
import { clearProgress, type FamilyProgress, progressOf } from './progress.ts';

/** Choosing a board to practise on. */
export interface Practise {
  readonly trees: ReadonlySignal<Loading<readonly TreeListing[]>>;
  /** Id of a tree; null for a surprise. */
  readonly tree: Signal<string | null>;
  readonly manner: Signal<DrillManner>;
  /** Boards may have what the tree does not list. */
  readonly unlisted: Signal<boolean>;
  /** A code that a trainer gave out, as typed. */
  readonly typed: Signal<string>;
  readonly refused: ReadonlySignal<string>;
  readonly unfinished: ReadonlySignal<readonly Unfinished[]>;
  readonly progress: ReadonlySignal<readonly FamilyProgress[]>;
  load(): Promise<void>;
  /** A board that nobody knows yet: its code, or null with `refused` saying why. */
  start(): Promise<string | null>;
  /** The code in the field, put right; null with `refused` saying why. */
  openTyped(): string | null;
  drop(code: string): void;
  clearProgress(): void;
}

export function createPractise({ trees, browser, practice }: Ports): Practise {
  const list = signal<Loading<readonly TreeListing[]>>(loading);
  const tree = signal<string | null>(null);
  const manner = signal<DrillManner>('free');
  const unlisted = signal(false);
  const typed = signal('');
  const refused = signal('');
  const unfinished = signal(unfinishedDrills(practice));
  const progress = signal(progressOf(practice));
  let busy = false;

  const startWith = async (all: readonly TreeListing[]): Promise<string | null> => {
    const seed = browser.newSeed();
    const id = tree.value ?? all[seed % all.length]?.id ?? '';
    const laidOut = await practiceBoard(trees, id);
    refused.value = laidOut.ok ? '' : laidOut.why;
    if (!laidOut.ok) return null;
    return codeOfPlan(
      planDrill(laidOut.value.tree, {
        seed: browser.newSeed(),
        manner: manner.value,
        unlisted: unlisted.value,
        board: laidOut.value.board,
      }),
    );
  };

  return {
    trees: list,
    tree,
    manner,
    unlisted,
    typed,
    refused,
    unfinished,
    progress,
    async load() {
      list.value = loading;
      const fetched = await trees.list();
      list.value = fetched.ok
        ? { state: 'ready', value: fetched.value }
        : { state: 'failed', why: fetched.why };
    },
    async start() {
      if (busy || list.value.state !== 'ready' || list.value.value.length === 0) return null;
      busy = true;
      try {
        return await startWith(list.value.value);
      } finally {
        busy = false;
      }
    },
    openTyped() {
      const plan = planOfCode(typed.value.trim());
      refused.value = plan.ok ? '' : plan.problem;
      return plan.ok ? codeOfPlan(plan.value) : null;
    },
    drop(code) {
      dropDrill(practice, code);
      unfinished.value = unfinishedDrills(practice);
    },
    clearProgress() {
      clearProgress(practice);
      progress.value = progressOf(practice);
    },
  };
}
