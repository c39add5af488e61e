import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { CompiledBoard } from '../../engine/model/compiled-board.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { apply, entryFor, openSession } from '../../engine/run/index.ts';
import type { Ports } from '../ports/ports.ts';
import type { BoardListing, Fetched } from '../ports/trees.ts';
import { equippedWith, keptEquipment } from './kept-equipment.ts';
import { type Loading, loading } from './loading.ts';
import { storeProblemWords } from './store-problem-words.ts';
import { summaryOf } from './summary-of.ts';

/** A job before its first entry: which board, whose, and what the owner says. */
export interface Opening {
  readonly tree: ReadonlySignal<Loading<CompiledTree>>;
  readonly board: Signal<string>;
  readonly owner: Signal<string>;
  readonly story: Signal<string>;
  /** Board sheets for the classes of board that the tree is for; empty also where they could not be fetched. */
  readonly sheets: ReadonlySignal<readonly BoardListing[]>;
  /** Id of the sheet that the job takes along; null for none. */
  readonly sheet: Signal<string | null>;
  readonly ready: ReadonlySignal<boolean>;
  readonly refused: ReadonlySignal<string>;
  load(): Promise<void>;
  /** Puts the job on the bench; its id, or null with `refused` saying why. */
  open(): Promise<string | null>;
}

export function createOpening(ports: Ports, treeId: string): Opening {
  const tree = signal<Loading<CompiledTree>>(loading);
  const [board, owner, story] = [signal(''), signal(''), signal('')];
  const sheets = signal<readonly BoardListing[]>([]);
  const sheet = signal<string | null>(null);
  const refused = signal('');
  let busy = false;

  const openWith = async (compiled: CompiledTree): Promise<string | null> => {
    const fetched = await boardOf(ports, sheet.value);
    if (!fetched.ok) {
      refused.value = `The board sheet could not be fetched: ${fetched.why}. Without a sheet the job can be opened now`;
      return null;
    }
    const session = openSession(compiled, { board: fetched.value, laterTrees: [] });
    const says = { board: board.value.trim(), owner: owner.value.trim(), story: story.value.trim() };
    const entry = entryFor(session, { say: 'open', ...says }, ports.clock.now());
    if (!entry.ok) {
      refused.value = entry.refusal.text;
      return null;
    }
    const id = ports.browser.newId();
    const opened = apply(session, entry.value);
    const ready = equippedWith(opened, keptEquipment(ports.settings), ports.clock.now());
    const stored = await ports.store.create(
      {
        ...{ format: 1, kind: 'job', id, tree: compiled, laterTrees: [] },
        ...{ board: fetched.value, entries: ready.entries },
      },
      summaryOf(id, ready),
    );
    if (!stored.ok) {
      refused.value = storeProblemWords(stored.problem);
      return null;
    }
    ports.browser.askToKeepData();
    ports.windows.tell({ job: id, entries: ready.entries.length });
    return id;
  };

  return {
    tree,
    board,
    owner,
    story,
    sheets,
    sheet,
    refused,
    ready: computed(() => tree.value.state === 'ready' && board.value.trim() !== ''),
    async load() {
      tree.value = loading;
      const fetched = await ports.trees.load(treeId);
      tree.value = fetched.ok
        ? { state: 'ready', value: fetched.value }
        : { state: 'failed', why: fetched.why };
      if (fetched.ok) sheets.value = await sheetsFor(ports, fetched.value);
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

async function sheetsFor(ports: Ports, tree: CompiledTree): Promise<readonly BoardListing[]> {
  const all = await ports.trees.boards();
  if (!all.ok) return [];
  return all.value.filter(({ boards }) => boards.some((board) => tree.boards.includes(board)));
}

const boardOf = async (ports: Ports, id: string | null): Promise<Fetched<CompiledBoard | null>> =>
  id === null ? { ok: true, value: null } : ports.trees.loadBoard(id);
