import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { DrillManner } from '../../../engine/practice/drill.ts';
import { codeOfPlan, planDrill, toolsIn } from '../../../engine/practice/index.ts';
import type { Ports } from '../../ports/ports.ts';
import type { Loading } from '../loading.ts';
import { placeOfRoute } from '../route.ts';
import { type PracticeBoard, practiceBoard } from './practice-board.ts';

/** A board that a trainer hands out. Neither tells anybody who reads it what is hidden. */
export interface Sealed {
  readonly code: string;
  readonly link: string;
}

/** What a trainer hides. */
export interface Trainer {
  /** Id of the tree that is chosen; null before that. */
  readonly tree: ReadonlySignal<string | null>;
  readonly laidOut: ReadonlySignal<Loading<PracticeBoard> | null>;
  /** Narrows the list of faults. */
  readonly typed: Signal<string>;
  /** A fault's id, or `unlisted`; null before one is chosen. */
  readonly fault: ReadonlySignal<string | null>;
  readonly manner: Signal<DrillManner>;
  /** Tools of the tree, and those that the trainees must do without. */
  readonly tools: ReadonlySignal<readonly string[]>;
  readonly lacking: Signal<readonly string[]>;
  readonly sealed: ReadonlySignal<Sealed | null>;
  /** What became of the last copying. */
  readonly said: ReadonlySignal<string>;
  choose(tree: string): Promise<void>;
  hide(fault: string): void;
  copy(text: string): Promise<void>;
}

export function createTrainer({ trees, browser }: Ports): Trainer {
  const tree = signal<string | null>(null);
  const laidOut = signal<Loading<PracticeBoard> | null>(null);
  const typed = signal('');
  const hidden = signal<{ readonly fault: string; readonly seed: number } | null>(null);
  const manner = signal<DrillManner>('free');
  const lacking = signal<readonly string[]>([]);
  const said = signal('');
  const ready = computed(() => (laidOut.value?.state === 'ready' ? laidOut.value.value : null));

  return {
    tree,
    laidOut,
    typed,
    fault: computed(() => hidden.value?.fault ?? null),
    manner,
    tools: computed(() => (ready.value === null ? [] : toolsIn(ready.value.tree))),
    lacking,
    sealed: computed(() => {
      if (ready.value === null || hidden.value === null) return null;
      const plan = planDrill(ready.value.tree, {
        ...hidden.value,
        manner: manner.value,
        board: ready.value.board,
        lacking: lacking.value,
      });
      const code = codeOfPlan(plan);
      return { code, link: browser.addressOf(placeOfRoute({ screen: 'drill', code })) };
    }),
    said,
    async choose(id) {
      tree.value = id;
      laidOut.value = { state: 'loading' };
      hidden.value = null;
      lacking.value = [];
      const fetched = await practiceBoard(trees, id);
      if (tree.value !== id) return;
      laidOut.value = fetched.ok
        ? { state: 'ready', value: fetched.value }
        : { state: 'failed', why: fetched.why };
    },
    hide(fault) {
      hidden.value = { fault, seed: browser.newSeed() };
      said.value = '';
    },
    async copy(text) {
      const done = await browser.copy(text);
      said.value = done ? 'Copied' : 'The browser does not let it be copied: select it and copy it by hand';
    },
  };
}
