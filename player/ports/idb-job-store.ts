import type { DBSchema, IDBPDatabase, IDBPTransaction } from 'idb';
import { openDB } from 'idb';
import { upgradeJob } from '../../engine/job/upgrade-job.ts';
import type { CompiledBoard } from '../../engine/model/compiled-board.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { Entry } from '../../engine/model/entry.ts';
import type { Job } from '../../engine/model/job.ts';
import type { JobStore, JobSummary } from './job-store.ts';
import type { Stored, StoreProblem } from './stored.ts';

interface Bench extends DBSchema {
  /** Key: `contentKey`. Jobs on the same text of a tree share one copy. */
  trees: { key: string; value: CompiledTree };
  /** Key: `contentKey`, as with trees. */
  boards: { key: string; value: CompiledBoard };
  jobs: { key: string; value: JobSummary & JobKeys };
  /** Key: job id and the entry's place in the job. */
  entries: { key: [string, number]; value: Entry };
}

/** Where the parts of a job lie that many jobs share. */
interface JobKeys {
  readonly treeKey: string;
  /** Absent in jobs of an older bench. */
  readonly laterKeys?: readonly string[];
  readonly boardKey?: string | null;
}

type Open = IDBPDatabase<Bench>;
const all = ['trees', 'boards', 'jobs', 'entries'] as const;
type Writing = IDBPTransaction<Bench, (typeof all)[number][], 'readwrite'>;

interface IdbJobStoreOptions {
  readonly name?: string;
  /** A key for the whole of a tree or board sheet, prose included: their own digests leave prose apart. */
  readonly contentKey: (content: CompiledTree | CompiledBoard) => Promise<string>;
}

class Refused extends Error {
  readonly problem: StoreProblem;
  constructor(problem: StoreProblem) {
    super(problem.kind);
    this.problem = problem;
  }
}

/** Jobs in this browser's IndexedDB. */
export function idbJobStore({ name = 'deadboard', contentKey }: IdbJobStoreOptions): JobStore {
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
      const tx = db.transaction([...all], 'readwrite', { durability: 'strict' });
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
        const tx = db.transaction(all);
        const job = await tx.objectStore('jobs').get(id);
        const tree = job && (await tx.objectStore('trees').get(job.treeKey));
        if (job === undefined || tree === undefined) throw new Refused({ kind: 'gone' });
        const { laterKeys = [], boardKey = null } = job;
        const later = await Promise.all(laterKeys.map((key) => tx.objectStore('trees').get(key)));
        const board = boardKey === null ? undefined : await tx.objectStore('boards').get(boardKey);
        const entries = await tx
          .objectStore('entries')
          .getAll(IDBKeyRange.bound([id, 0], [id, Number.MAX_VALUE]));
        const laterTrees = later.filter((one) => one !== undefined);
        const stored: Job = { format: 1, kind: 'job', id, tree, laterTrees, board: board ?? null, entries };
        // Older benches kept less of each part.
        return upgradeJob(stored) as Job;
      }),

    create: async (job, summary) => {
      // Before the transaction: one that waits for anything else ends by itself.
      const { tree, laterTrees, board } = job;
      const treeKey = await contentKey(tree);
      const laterKeys = await Promise.all(laterTrees.map(contentKey));
      const boardKey = board === null ? null : await contentKey(board);
      return write(async (tx) => {
        const there = await tx.objectStore('jobs').get(job.id);
        if (there !== undefined) throw new Refused({ kind: 'moved-on', entries: there.entries });
        const trees = tx.objectStore('trees');
        await trees.put(tree, treeKey);
        for (const [index, key] of laterKeys.entries()) await trees.put(laterTrees[index] ?? tree, key);
        if (board !== null && boardKey !== null) await tx.objectStore('boards').put(board, boardKey);
        await addEntries(tx, job.id, 0, job.entries);
        await tx.objectStore('jobs').add({ ...summary, treeKey, laterKeys, boardKey });
      });
    },

    append: (id, held, entries, summary) =>
      write(async (tx) => {
        const job = await tx.objectStore('jobs').get(id);
        if (job === undefined) throw new Refused({ kind: 'gone' });
        if (job.entries !== held) throw new Refused({ kind: 'moved-on', entries: job.entries });
        await addEntries(tx, id, held, entries);
        await tx.objectStore('jobs').put({ ...summary, ...keysOf(job) });
      }),

    addTree: async (id, tree) => {
      const key = await contentKey(tree);
      return write(async (tx) => {
        const job = await tx.objectStore('jobs').get(id);
        if (job === undefined) throw new Refused({ kind: 'gone' });
        await tx.objectStore('trees').put(tree, key);
        const laterKeys = [...new Set([...(job.laterKeys ?? []), key])];
        await tx.objectStore('jobs').put({ ...job, laterKeys });
      });
    },
  };
}

const keysOf = ({ treeKey, laterKeys = [], boardKey = null }: JobKeys): Required<JobKeys> => ({
  treeKey,
  laterKeys,
  boardKey,
});

async function addEntries(tx: Writing, id: string, held: number, entries: readonly Entry[]): Promise<void> {
  const store = tx.objectStore('entries');
  await Promise.all(entries.map((entry, index) => store.add(entry, [id, held + index])));
}

function openBench(name: string, forget: () => void): Promise<Open> {
  return new Promise((resolve, reject) => {
    openDB<Bench>(name, 2, {
      upgrade(db, before) {
        if (before < 1) {
          db.createObjectStore('trees');
          db.createObjectStore('jobs', { keyPath: 'id' });
          db.createObjectStore('entries');
        }
        if (before < 2) db.createObjectStore('boards');
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
