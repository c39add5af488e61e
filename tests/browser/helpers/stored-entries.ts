import type { Page } from 'playwright-core';
import type { Entry } from '../../../engine/model/entry.ts';

/** What an entry says, without its time. */
export type Said = Omit<Entry, 'at'>;

/** An entry as any walk would have made it. */
export const timeless = ({ at: _at, ...said }: Entry): Said => said;

/** The job that the page's address names. */
export const jobIdOf = (page: Page): string => /#\/job\/([^/]+)/.exec(page.url())?.[1] ?? '';

/** The entries of a job as they lie in the browser's store, read past the player. */
export const storedEntries = (page: Page, job = jobIdOf(page)): Promise<readonly Entry[]> =>
  page.evaluate(readEntries, job);

/** Runs in the page. */
function readEntries(job: string): Promise<readonly Entry[]> {
  return new Promise((resolve, reject) => {
    const open = indexedDB.open('deadboard');
    open.onerror = () => reject(open.error);
    open.onsuccess = () => {
      const db = open.result;
      const range = IDBKeyRange.bound([job, 0], [job, Number.MAX_VALUE]);
      const got = db.transaction('entries').objectStore('entries').getAll(range);
      got.onerror = () => reject(got.error);
      got.onsuccess = () => {
        db.close();
        resolve(got.result);
      };
    };
  });
}
