import type { CompiledBoard } from '../../engine/model/compiled-board.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { BoardListing, Fetched, TreeListing, Trees } from './trees.ts';

async function fetchJson<T>(path: string): Promise<Fetched<T>> {
  try {
    const response = await fetch(path);
    if (!response.ok) return { ok: false, why: `the server answered ${response.status}` };
    return { ok: true, value: (await response.json()) as T };
  } catch (error) {
    return { ok: false, why: error instanceof Error ? error.message : String(error) };
  }
}

/** The trees and board sheets that were compiled with the player, beside its page. */
export const fetchedTrees: Trees = {
  async list() {
    const index = await fetchJson<{ readonly trees: readonly TreeListing[] }>('./trees/index.json');
    return index.ok ? { ok: true, value: index.value.trees } : index;
  },
  load: (id) => fetchJson<CompiledTree>(`./trees/${encodeURIComponent(id)}.json`),
  async boards() {
    const index = await fetchJson<{ readonly boards: readonly BoardListing[] }>('./boards/index.json');
    return index.ok ? { ok: true, value: index.value.boards } : index;
  },
  loadBoard: (id) => fetchJson<CompiledBoard>(`./boards/${encodeURIComponent(id)}.json`),
};
