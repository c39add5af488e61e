import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { type Audience, recordMarkdown, recordOf } from '../../engine/job/index.ts';
import type { JobRecord } from '../../engine/model/record.ts';
import type { Ports } from '../ports/ports.ts';
import { type Loading, loading } from './loading.ts';
import { fileNameOf } from './save-job.ts';
import { storeProblemWords } from './store-problem-words.ts';

/** The report on a job, for its owner or for the bench. */
export interface RecordPage {
  readonly record: ReadonlySignal<Loading<JobRecord>>;
  readonly audience: Signal<Audience>;
  load(): Promise<void>;
  print(): void;
  /** As text (Markdown), as it stands on the screen. */
  saveText(): void;
  /** As data (JSON). */
  saveData(): void;
}

export function createRecordPage({ store, browser, files }: Ports, id: string): RecordPage {
  const record = signal<Loading<JobRecord>>(loading);
  const audience = signal<Audience>('owner');
  const save = (ending: string, type: string, textOf: (record: JobRecord) => string) => {
    if (record.value.state !== 'ready') return;
    const { value } = record.value;
    files.save(
      fileNameOf(value.board, (value.closed ?? value.opened).slice(0, 10), ending),
      type,
      textOf(value),
    );
  };
  return {
    record,
    audience,
    async load() {
      const job = await store.load(id);
      record.value = job.ok
        ? { state: 'ready', value: recordOf(job.value) }
        : { state: 'failed', why: storeProblemWords(job.problem) };
    },
    print: () => browser.print(),
    saveText: () => save('md', 'text/markdown', (value) => recordMarkdown(value, audience.value)),
    saveData: () => save('record.json', 'application/json', (value) => JSON.stringify(value, null, 1)),
  };
}
