import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { JobSummary } from '../ports/job-store.ts';
import type { Ports } from '../ports/ports.ts';
import { type Loading, loading } from './loading.ts';
import { storeProblemWords } from './store-problem-words.ts';

/** The jobs on the bench. */
export interface Bench {
  readonly jobs: ReadonlySignal<Loading<readonly JobSummary[]>>;
  readonly open: ReadonlySignal<readonly JobSummary[]>;
  readonly closed: ReadonlySignal<readonly JobSummary[]>;
  /** What became of the file that was taken in last. */
  readonly said: ReadonlySignal<string>;
  load(): Promise<void>;
  takeIn(): Promise<void>;
  dispose(): void;
}

export function createBench(ports: Ports): Bench {
  const jobs = signal<Loading<readonly JobSummary[]>>(loading);
  const said = signal('');
  const listed = computed(() => (jobs.value.state === 'ready' ? jobs.value.value : []));

  const load = async () => {
    const list = await ports.store.list();
    jobs.value = list.ok
      ? { state: 'ready', value: list.value }
      : { state: 'failed', why: storeProblemWords(list.problem) };
  };

  const stop = ports.windows.listen(() => void load());
  return {
    jobs,
    said,
    open: computed(() => listed.value.filter(({ state }) => state === 'open')),
    closed: computed(() => listed.value.filter(({ state }) => state !== 'open')),
    load,
    async takeIn() {
      const file = await ports.files.open('.json,application/json');
      if (file === null) return;
      const { takeInJob } = await import('./take-in-job.ts');
      said.value = await takeInJob(ports, file);
      await load();
    },
    dispose: stop,
  };
}
