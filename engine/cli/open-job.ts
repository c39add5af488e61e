import { localIso } from '../job/index.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Job } from '../model/job.ts';
import { type Bench, CannotRun } from './bench.ts';
import { readJob } from './job-file.ts';
import { loadBoardFile } from './load-board-file.ts';

interface Files {
  readonly job: string | null;
  readonly sheet: string | null;
}

/** The job of a file, or a new one on the tree that was named. */
export async function openJob(bench: Bench, tree: CompiledTree | null, files: Files): Promise<Job> {
  const board = files.sheet === null ? null : await loadBoardFile(bench, files.sheet);
  if (files.job !== null && (await bench.exists(files.job))) {
    const job = await readJob(bench, files.job);
    if (board !== null && board.digest !== job.board?.digest)
      bench.err(
        `This job goes on ${job.board === null ? 'without a board sheet' : `with the sheet "${job.board.title}"`} as it was begun`,
      );
    return job;
  }
  if (tree === null) throw new CannotRun('name a tree, or a job that exists with --job');
  return { format: 1, kind: 'job', id: jobId(tree.id, bench), tree, laterTrees: [], board, entries: [] };
}

const jobId = (tree: string, bench: Bench): string =>
  `${tree}-${localIso(bench.now()).slice(0, 19).replace(/\D/g, '')}`;
