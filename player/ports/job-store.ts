import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { Entry } from '../../engine/model/entry.ts';
import type { Job } from '../../engine/model/job.ts';
import type { Stored } from './stored.ts';

/** What a job's card shows, kept beside its entries so that the bench opens without replaying every job. */
export interface JobSummary {
  readonly id: string;
  readonly board: string;
  readonly owner: string;
  readonly symptom: string;
  /** One sentence on what was found last; null before the first finding. */
  readonly finding: string | null;
  /** Where the walk stands, by the section's title; null before the first section and after the last. */
  readonly standsAt: string | null;
  readonly ruledOut: number;
  readonly possible: number;
  /** Open work, as noted. */
  readonly todo: readonly string[];
  readonly state: 'open' | 'mended' | 'not mended';
  /** How many entries the job holds. */
  readonly entries: number;
  /** Time of the last entry, ISO 8601 with the bench's offset. */
  readonly at: string;
}

/** Where jobs live. Every write has reached the disk when its promise resolves. */
export interface JobStore {
  list(): Promise<Stored<readonly JobSummary[]>>;
  load(id: string): Promise<Stored<Job>>;
  /** A new job with its first entries. */
  create(job: Job, summary: JobSummary): Promise<Stored<void>>;
  /** Adds `entries` after the `held` ones that the writer knows of; `moved-on` when there are more. */
  append(id: string, held: number, entries: readonly Entry[], summary: JobSummary): Promise<Stored<void>>;
  /** Keeps one more tree with a job, before an entry hands the job over to it or moves the job to it. */
  addTree(id: string, tree: CompiledTree): Promise<Stored<void>>;
}
