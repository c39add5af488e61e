import type { BrowserContext, Page } from 'playwright-core';

/** What is wrong with the browser's store just now: nothing, no room, or writes that never come to an end. */
type StoreFault = 'none' | 'full' | 'slow';

/** What the page asked of its store so far. */
export interface StoreWrites {
  /** Durability asked for, one for each transaction that writes. */
  readonly durabilities: readonly string[];
}

interface Faulty {
  storeFault?: StoreFault;
  storeWrites?: { durabilities: string[] };
}

/** Every page of this context gets a store with a fault that can be switched, and counts its writes. */
export const withStoreFaults = (context: BrowserContext): Promise<void> =>
  context.addInitScript(installFaults).then(() => {});

export const setStoreFault = (page: Page, fault: StoreFault): Promise<void> =>
  page.evaluate((next) => {
    (globalThis as Faulty).storeFault = next;
  }, fault);

export const storeWrites = (page: Page): Promise<StoreWrites> =>
  page.evaluate(() => (globalThis as Faulty).storeWrites ?? { durabilities: [] });

/** Runs in the page before anything else. */
function installFaults(): void {
  const world = globalThis as Faulty;
  world.storeWrites = { durabilities: [] };

  for (const method of ['add', 'put'] as const) {
    const real = IDBObjectStore.prototype[method];
    IDBObjectStore.prototype[method] = function (...args) {
      if (world.storeFault === 'full') throw new DOMException('no room', 'QuotaExceededError');
      return real.apply(this, args);
    };
  }

  const begin = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (stores, mode, options) {
    const transaction = begin.call(this, stores, mode, options);
    if (mode !== 'readwrite') return transaction;
    world.storeWrites?.durabilities.push(transaction.durability);
    if (world.storeFault === 'slow') {
      // A transaction lives as long as it has a request: another one follows each until the fault is lifted.
      const store = transaction.objectStore(transaction.objectStoreNames[0] as string);
      const again = () => {
        if (world.storeFault === 'slow') store.count().onsuccess = again;
      };
      again();
    }
    return transaction;
  };
}
