import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { TreeListing, Trees } from '../ports/trees.ts';
import { type Loading, loading } from './loading.ts';
import { narrow } from './narrow.ts';

/** The symptoms that there are trees for. */
export interface SymptomList {
  readonly typed: Signal<string>;
  readonly all: ReadonlySignal<Loading<readonly TreeListing[]>>;
  /** Those that fit what was typed. */
  readonly fitting: ReadonlySignal<readonly TreeListing[]>;
  load(): Promise<void>;
}

export function createSymptomList(trees: Trees): SymptomList {
  const typed = signal('');
  const all = signal<Loading<readonly TreeListing[]>>(loading);
  const fitting = computed(() =>
    all.value.state === 'ready'
      ? narrow(all.value.value, typed.value, ({ symptom, boards, title }) =>
          [symptom, title, ...boards].join(' '),
        )
      : [],
  );
  return {
    typed,
    all,
    fitting,
    async load() {
      all.value = loading;
      const list = await trees.list();
      all.value = list.ok ? { state: 'ready', value: list.value } : { state: 'failed', why: list.why };
    },
  };
}
