import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { listingOf } from '../../../player/build/listing-of.ts';
import { fakeBrowser } from '../../../player/ports/fake-browser.ts';
import { fakeClock } from '../../../player/ports/fake-clock.ts';
import { fakeFiles } from '../../../player/ports/fake-files.ts';
import { memoryJobStore } from '../../../player/ports/memory-job-store.ts';
import type { Ports } from '../../../player/ports/ports.ts';
import type { Trees } from '../../../player/ports/trees.ts';
import type { Moved, Windows } from '../../../player/ports/windows.ts';

const treesOf = (trees: readonly CompiledTree[]): Trees => ({
  list: async () => ({ ok: true, value: trees.map(listingOf) }),
  load: async (id) => {
    const tree = trees.find((one) => one.id === id);
    return tree === undefined ? { ok: false, why: 'the server answered 404' } : { ok: true, value: tree };
  },
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
  } satisfies Ports;
}
