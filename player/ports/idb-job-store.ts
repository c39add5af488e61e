import type { DBSchema, IDBPDatabase, IDBPTransaction } from 'idb';
import { openDB } from 'idb';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { Entry } from '../../engine/model/entry.ts';
import type { Job } from '../../engine/model/job.ts';
import type { JobStore, JobSummary } from './job-store.ts';
import type { Stored, StoreProblem } from './stored.ts';

interface Bench extends DBSchema {
  /** Key: `treeKey`. Jobs on the same text of a tree share one copy. */
  trees: { key: string; value: CompiledTree };
  jobs: { key: string; value: JobSummary & { readonly treeKey: string } };
  /** Key: job id and the entry's place in the job. */
  entries: { key: [string, number]; value: Entry };
}

type Open = IDBPDatabase<Bench>;
type Writing = IDBPTransaction<Bench, ('trees' | 'jobs' | 'entries')[], 'readwrite'>;

interface IdbJobStoreOptions {
  readonly name?: string;
  /** A key for a tree's whole text, prose included: the tree's own digest leaves prose apart. */
  readonly treeKey: (tree: CompiledTree) => Promise<string>;
}

class Refused extends Error {
  readonly problem: StoreProblem;
  constructor(problem: StoreProblem) {
    super(problem.kind);
    this.problem = problem;
  }
}

/** Jobs in this browser's IndexedDB. */
export function idbJobStore({ name = 'deadboard', treeKey }: IdbJobStoreOptions): JobStore {
  let opened: Promise<Open> | null = null;
  const forget = () => {
    opened = null;
  };
  const open = (): Promise<Open> => {
    opened ??= openBench(name, forget).catch((error) => {
      forget();
      throw error;
    });
    return opened;
  };

  const attempt = async <T>(work: (db: Open) => Promise<T>): Promise<Stored<T>> => {
    try {
      return { ok: true, value: await work(await open()) };
    } catch (error) {
      if (isClosed(error)) forget();
      return { ok: false, problem: problemOf(error) };
    }
  };

  const write = (work: (tx: Writing) => Promise<void>) =>
    attempt(async (db) => {
      const tx = db.transaction(['trees', 'jobs', 'entries'], 'readwrite', { durability: 'strict' });
      try {
        await work(tx);
        await tx.done;
      } catch (error) {
        tx.done.catch(() => {});
        if (error instanceof Refused) tx.abort();
        throw error;
      }
    });

  return {
    list: () =>
      attempt(async (db) => {
        const jobs = await db.getAll('jobs');
        return jobs.sort((a, b) => Date.parse(b.at) - Date.parse(a.at));
      }),

    load: (id) =>
      attempt(async (db) => {
        const tx = db.transaction(['trees', 'jobs', 'entries']);
        const job = await tx.objectStore('jobs').get(id);
        const tree = job && (await tx.objectStore('trees').get(job.treeKey));
        if (tree === undefined) throw new Refused({ kind: 'gone' });
        const entries = await tx
          .objectStore('entries')
          .getAll(IDBKeyRange.bound([id, 0], [id, Number.MAX_VALUE]));
        return { format: 1, kind: 'job', id, tree, laterTrees: [], board: null, entries } satisfies Job;
      }),

    create: async (job, summary) => {
      // Before the transaction: one that waits for anything else ends by itself.
      const key = await treeKey(job.tree);
      return write(async (tx) => {
        const there = await tx.objectStore('jobs').get(job.id);
        if (there !== undefined) throw new Refused({ kind: 'moved-on', entries: there.entries });
        await tx.objectStore('trees').put(job.tree, key);
        await addEntries(tx, job.id, 0, job.entries);
        await tx.objectStore('jobs').add({ ...summary, treeKey: key });
      });
    },

    append: (id, held, entries, summary) =>
      write(async (tx) => {
        const job = await tx.objectStore('jobs').get(id);
        if (job === undefined) throw new Refused({ kind: 'gone' });
        if (job.entries !== held) throw new Refused({ kind: 'moved-on', entries: job.entries });
        await addEntries(tx, id, held, entries);
        await tx.objectStore('jobs').put({ ...summary, treeKey: job.treeKey });
      }),
  };
}

async function addEntries(tx: Writing, id: string, held: number, entries: readonly Entry[]): Promise<void> {
  const store = tx.objectStore('entries');
  await Promise.all(entries.map((entry, index) => store.add(entry, [id, held + index])));
}

function openBench(name: string, forget: () => void): Promise<Open> {
  return new Promise((resolve, reject) => {
    openDB<Bench>(name, 1, {
      upgrade(db) {
        db.createObjectStore('trees');
        db.createObjectStore('jobs', { keyPath: 'id' });
        db.createObjectStore('entries');
      },
      blocked: () => reject(new Error('another window holds an older version of the bench open')),
      blocking: (_current, _blocked, event) => {
        forget();
        (event.target as IDBDatabase).close();
      },
      terminated: forget,
    }).then(resolve, reject);
  });
}

const nameOf = (error: unknown) =>
  error instanceof DOMException || error instanceof Error ? error.name : '';
const isClosed = (error: unknown) =>
  ['InvalidStateError', 'UnknownError', 'AbortError'].includes(nameOf(error));

function problemOf(error: unknown): StoreProblem {
  if (error instanceof Refused) return error.problem;
  if (nameOf(error) === 'QuotaExceededError') return { kind: 'full' };
  return { kind: 'unavailable', detail: error instanceof Error ? error.message : String(error) };
}
