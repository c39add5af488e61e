import { upgradeJob } from '../job/upgrade-job.ts';
import { problemsOfJob } from '../job/validate-job.ts';
import type { Job } from '../model/job.ts';
import { type Bench, CannotRun } from './bench.ts';
import { readFile, writeFile } from './read-file.ts';

/** A job from its file, of an older version too; a file that is none ends the command with the first things that are wrong. */
export async function readJob(bench: Bench, path: string): Promise<Job> {
  const text = await readFile(bench, path);
  let data: unknown;
  try {
    data = upgradeJob(JSON.parse(text));
  } catch (error) {
    throw new CannotRun(`"${path}" is not a job file: ${(error as Error).message}`);
  }
  const problems = problemsOfJob(data);
  if (problems.length > 0)
    throw new CannotRun(`"${path}" is not a job file: ${problems.slice(0, 3).join('; ')}`);
  return data as Job;
}

/** Says what was kept when the file cannot be written. */
export const writeJob = (bench: Bench, path: string, job: Job): Promise<void> =>
  writeFile(
    bench,
    path,
    `${JSON.stringify(job, null, 1)}\n`,
    'The file is as it was before this answer; free some room or name another file, then give the answer again',
  );
