import type { Entry } from '../../engine/model/entry.ts';
import type { Job } from '../../engine/model/job.ts';
import type { JobStore, JobSummary } from './job-store.ts';
import type { Stored, StoreProblem } from './stored.ts';

interface Held {
  readonly job: Job;
  readonly summary: JobSummary;
}

/** A store that forgets: for tests, with a fault that can be switched on. */
export interface MemoryJobStore extends JobStore {
  /** Every call from now on meets this problem; null for none. */
  failWith(problem: StoreProblem | null): void;
}

export function memoryJobStore(): MemoryJobStore {
  const jobs = new Map<string, Held>();
  let fault: StoreProblem | null = null;
  const refuse = (problem: StoreProblem): Stored<never> => ({ ok: false, problem });
  const guarded = async <T>(work: () => Stored<T>): Promise<Stored<T>> =>
    fault === null ? work() : refuse(fault);
  const done: Stored<void> = { ok: true, value: undefined };

  return {
    failWith(problem) {
      fault = problem;
    },
    list: () =>
      guarded(() => {
        const summaries = [...jobs.values()].map(({ summary }) => summary);
        return { ok: true, value: summaries.sort((a, b) => Date.parse(b.at) - Date.parse(a.at)) };
      }),
    load: (id) =>
      guarded<Job>(() => {
        const held = jobs.get(id);
        return held === undefined ? refuse({ kind: 'gone' }) : { ok: true, value: held.job };
      }),
    create: (job, summary) =>
      guarded(() => {
        const there = jobs.get(job.id);
        if (there !== undefined) return refuse({ kind: 'moved-on', entries: there.job.entries.length });
        jobs.set(job.id, { job, summary });
        return done;
      }),
    append: (id, held, entries: readonly Entry[], summary) =>
      guarded(() => {
        const there = jobs.get(id);
        if (there === undefined) return refuse({ kind: 'gone' });
        if (there.job.entries.length !== held) {
          return refuse({ kind: 'moved-on', entries: there.job.entries.length });
        }
        jobs.set(id, { job: { ...there.job, entries: [...there.job.entries, ...entries] }, summary });
        return done;
      }),
    addTree: (id, tree) =>
      guarded(() => {
        const there = jobs.get(id);
        if (there === undefined) return refuse({ kind: 'gone' });
        const isThere = there.job.laterTrees.some(({ digest }) => digest === tree.digest);
        const laterTrees = isThere ? there.job.laterTrees : [...there.job.laterTrees, tree];
        jobs.set(id, { ...there, job: { ...there.job, laterTrees } });
        return done;
      }),
  };
}
