import type { Job } from '../../../engine/model/job.ts';
import type { Session } from '../../../engine/run/index.ts';
import { takeInByKeys } from './job-files.ts';
import type { Room } from './use-player.ts';

/** Takes a walk in as a job file, and shows its step. */
export async function putOnBench({ page, url }: Pick<Room, 'page' | 'url'>, id: string, session: Session) {
  const job: Job = {
    format: 1,
    kind: 'job',
    id,
    tree: session.firstTree,
    laterTrees: session.laterTrees,
    board: session.board,
    entries: session.entries,
  };
  await page.goto(`${url}#/`);
  const said = await takeInByKeys(page, `${id}.json`, JSON.stringify(job));
  if (said.includes('was not taken in')) throw new Error(said);
  await page.goto(`${url}#/job/${id}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
}
