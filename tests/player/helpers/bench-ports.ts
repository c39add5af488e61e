import type { CompiledBoard } from '../../../engine/model/compiled-board.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { boardListingOf } from '../../../player/build/board-listing-of.ts';
import { listingOf } from '../../../player/build/listing-of.ts';
import { fakeBrowser } from '../../../player/ports/fake-browser.ts';
import { fakeClock } from '../../../player/ports/fake-clock.ts';
import { fakeFiles } from '../../../player/ports/fake-files.ts';
import { fakeRanker } from '../../../player/ports/fake-ranker.ts';
import { memoryJobStore } from '../../../player/ports/memory-job-store.ts';
import { memoryPracticeShelf } from '../../../player/ports/memory-practice-shelf.ts';
import type { Ports } from '../../../player/ports/ports.ts';
import type { Fetched, Trees } from '../../../player/ports/trees.ts';
import type { Moved, Windows } from '../../../player/ports/windows.ts';

function byId<T extends { readonly id: string }>(all: readonly T[], id: string): Fetched<T> {
  const found = all.find((one) => one.id === id);
  return found === undefined ? { ok: false, why: 'the server answered 404' } : { ok: true, value: found };
}

/** A server with these trees and board sheets. */
export const treesOf = (trees: readonly CompiledTree[], boards: readonly CompiledBoard[] = []): Trees => ({
  list: async () => ({ ok: true, value: trees.map(listingOf) }),
  load: async (id) => byId(trees, id),
  boards: async () => ({ ok: true, value: boards.map(boardListingOf) }),
  loadBoard: async (id) => byId(boards, id),
});

/** Windows of one bench: what one tells, the others hear. */
export function windowsOfOneBench(): () => Windows {
  const hearers = new Map<Windows, (moved: Moved) => void>();
  return () => {
    const self: Windows = {
      tell(moved) {
        for (const [other, hear] of hearers) if (other !== self) hear(moved);
      },
      listen(hear) {
        hearers.set(self, hear);
        return () => hearers.delete(self);
      },
    };
    return self;
  };
}

/** A bench without a browser: everything is kept in memory and can be looked at. */
export function benchPorts(...trees: readonly CompiledTree[]) {
  const settings = new Map<string, string>();
  return {
    store: memoryJobStore(),
    trees: treesOf(trees),
    clock: fakeClock(),
    files: fakeFiles(),
    windows: windowsOfOneBench()(),
    settings: {
      read: (name: string) => settings.get(name) ?? null,
      write: (name: string, value: string) => void settings.set(name, value),
    },
    browser: fakeBrowser(),
    practice: memoryPracticeShelf(),
    ranker: fakeRanker(),
  } satisfies Ports;
}
