import type { Job } from '../../engine/model/job.ts';
import type { Session } from '../../engine/run/index.ts';
import type { Files } from '../ports/files.ts';

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');

/** A name for a file about a job: `bench-machine-of-ada-2031-04-05.json`. */
export function fileNameOf(board: string, day: string, ending: string): string {
  return `${plain(board) || 'job'}-${day}.${ending}`;
}

/** Saves the whole job, its trees and its board sheet included, as one file. */
export function saveJob(files: Files, id: string, session: Session): void {
  const job: Job = {
    format: 1,
    kind: 'job',
    id,
    tree: session.firstTree,
    laterTrees: session.laterTrees,
    board: session.board,
    entries: session.entries,
  };
  const board = session.entries.find((entry) => entry.kind === 'opened')?.board ?? '';
  const day = session.entries.at(-1)?.at.slice(0, 10) ?? '';
  files.save(fileNameOf(board, day, 'json'), 'application/json', JSON.stringify(job, null, 1));
}
