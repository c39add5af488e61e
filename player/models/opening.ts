import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { apply, entryFor, openSession } from '../../engine/run/index.ts';
import type { Ports } from '../ports/ports.ts';
import { type Loading, loading } from './loading.ts';
import { storeProblemWords } from './store-problem-words.ts';
import { summaryOf } from './summary-of.ts';

/** A job before its first entry: which board, whose, and what the owner says. */
export interface Opening {
  readonly tree: ReadonlySignal<Loading<CompiledTree>>;
  readonly board: Signal<string>;
  readonly owner: Signal<string>;
  readonly story: Signal<string>;
  readonly ready: ReadonlySignal<boolean>;
  readonly refused: ReadonlySignal<string>;
  load(): Promise<void>;
  /** Puts the job on the bench; its id, or null with `refused` saying why. */
  open(): Promise<string | null>;
}

export function createOpening(ports: Ports, treeId: string): Opening {
  const tree = signal<Loading<CompiledTree>>(loading);
  const [board, owner, story] = [signal(''), signal(''), signal('')];
  const refused = signal('');
  let busy = false;

  const openWith = async (compiled: CompiledTree): Promise<string | null> => {
    const session = openSession(compiled);
    const says = { board: board.value.trim(), owner: owner.value.trim(), story: story.value.trim() };
    const entry = entryFor(session, { say: 'open', ...says }, ports.clock.now());
    if (!entry.ok) {
      refused.value = entry.refusal.text;
      return null;
    }
    const id = ports.browser.newId();
    const entries = [entry.value];
    const summary = summaryOf(id, apply(session, entry.value));
    const stored = await ports.store.create(
      { format: 1, kind: 'job', id, tree: compiled, laterTrees: [], board: null, entries },
      summary,
    );
    if (!stored.ok) {
      refused.value = storeProblemWords(stored.problem);
      return null;
    }
    ports.browser.askToKeepData();
    ports.windows.tell({ job: id, entries: entries.length });
    return id;
  };

  return {
    tree,
    board,
    owner,
    story,
    refused,
    ready: computed(() => tree.value.state === 'ready' && board.value.trim() !== ''),
    async load() {
      tree.value = loading;
      const fetched = await ports.trees.load(treeId);
      tree.value = fetched.ok
        ? { state: 'ready', value: fetched.value }
        : { state: 'failed', why: fetched.why };
    },
    async open() {
      if (tree.value.state !== 'ready' || busy) return null;
      busy = true;
      try {
        return await openWith(tree.value.value);
      } finally {
        busy = false;
      }
    },
  };
}
