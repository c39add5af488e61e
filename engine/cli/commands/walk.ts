import { basename } from 'node:path';
import { localIso } from '../../job/index.ts';
import type { Job } from '../../model/job.ts';
import { apply, replay, type Session } from '../../run/index.ts';
import { type Bench, CannotRun, type ExitCode, exit } from '../bench.ts';
import type { Command } from '../command.ts';
import { readJob, writeJob } from '../job-file.ts';
import { loadTreeFile } from '../load-tree-file.ts';
import { readOptions } from '../read-options.ts';
import { showStanding } from '../show/show-standing.ts';
import { standingOf } from '../standing-of.ts';
import { takeAnswer } from '../take-answer.ts';
import { talk } from '../talk.ts';

export const walk: Command = {
  summary: 'walk a tree at the terminal, or answer for a script',
  help: `Usage: deadboard walk TREE [--job FILE] [--answer TEXT]… [--json]
       deadboard walk --job FILE …

Walks a tree (.md, or compiled .json). At a keyboard it asks and takes answers,
each kept in the job file before the next question. A job goes on with the tree
it was begun with.

  --job FILE     the job, made if there is none. Without it, a walk at the keyboard
                 makes a new file in this folder, and a scripted walk keeps nothing
  --board TEXT   name of the board, for a new job
  --answer TEXT  one answer, as it would be typed; may be given many times:
                 'v5 = 4.98 V', 'bus := 66 MHz', done, yes, same, back, 'cannot read',
                 'retake v5 = 5.02', 'note: text', 'remedied: C14', close
                 (a bare value answers what is asked)
  --json         where the job stands, as JSON

Exit code 0: every answer taken; 1: an answer was refused (those before it are kept);
2: could not run.`,
  run,
};

const options = {
  job: { type: 'string' },
  board: { type: 'string' },
  answer: { type: 'string', multiple: true },
  json: { type: 'boolean' },
} as const;

async function run(args: readonly string[], bench: Bench): Promise<ExitCode> {
  const { values, positionals } = readOptions(args, options);
  const answers = values.answer ?? [];
  const scripted = answers.length > 0 || values.json === true || !bench.interactive;
  const job = await openJob(bench, positionals, values);
  const path = values.job ?? (scripted ? null : newName(job));
  let session = begun(replay(job.tree, job.entries), {
    board: values.board ?? (scripted ? '' : null),
    answer: answers[0] ?? null,
    at: localIso(bench.now()),
  });

  const keep = async (next: Session): Promise<void> => {
    if (path !== null) await writeJob(bench, path, { ...job, entries: next.entries });
    session = next;
  };
  if (session.entries.length > job.entries.length) await keep(session);
  if (!scripted) {
    if (path !== null) bench.out(`This job is kept in ${path}\n`);
    await talk(bench, session, keep);
    return exit.clean;
  }

  for (const text of answers) {
    const taken = takeAnswer(session, text, bench);
    if (!taken.ok) {
      bench.err(`deadboard walk: "${text}" was not taken: ${taken.why}`);
      print(bench, job, session, values.json === true);
      return exit.problems;
    }
    await keep(taken.session);
  }
  print(bench, job, session, values.json === true);
  return exit.clean;
}

function print(bench: Bench, job: Job, session: Session, json: boolean): void {
  const standing = standingOf(job, session);
  bench.out(json ? JSON.stringify(standing, null, 2) : showStanding(standing, session, bench.width));
}

async function openJob(
  bench: Bench,
  [treePath, ...more]: readonly string[],
  { job: jobPath }: { readonly job?: string | undefined },
): Promise<Job> {
  if (more.length > 0) throw new CannotRun('name one tree');
  if (jobPath !== undefined && (await bench.exists(jobPath))) {
    const job = await readJob(bench, jobPath);
    if (treePath !== undefined) await sayIfNewer(bench, job, treePath);
    return job;
  }
  if (treePath === undefined) throw new CannotRun('name a tree, or a job that exists with --job');
  const tree = await loadTreeFile(bench, treePath);
  return {
    format: 1,
    kind: 'job',
    id: jobId(tree.id, bench),
    tree,
    laterTrees: [],
    board: null,
    entries: [],
  };
}

async function sayIfNewer(bench: Bench, job: Job, treePath: string): Promise<void> {
  const tree = await loadTreeFile(bench, treePath);
  if (tree.digest !== job.tree.digest) {
    bench.err(`This job was begun with another version of "${job.tree.title}" and goes on with that one`);
  }
}

const jobId = (tree: string, bench: Bench): string =>
  `${tree}-${localIso(bench.now()).slice(0, 19).replace(/\D/g, '')}`;

/** The id of a compiled tree may hold anything: no part of it names another folder. */
const newName = (job: Job): string => `${basename(job.id)}.job.json`;

interface Beginning {
  /** Null: the keyboard asks for it. */
  readonly board: string | null;
  /** A script's first answer; null at the keyboard, and where a job is only looked at. */
  readonly answer: string | null;
  readonly at: string;
}

/** A script need not open its job, nor take it up again on a later day: the entry is made for it, unless its first
 *  answer does so. Looking at a job leaves it as it is. */
function begun(session: Session, { board, answer, at }: Beginning): Session {
  const last = session.entries.at(-1);
  if (last === undefined) {
    const opens = board !== null && !/^\s*open:/i.test(answer ?? '');
    return opens ? apply(session, { kind: 'opened', board, owner: '', story: '', at }) : session;
  }
  const resumes = answer !== null && !/^\s*resume\b/i.test(answer);
  const otherDay = last.at.slice(0, 10) !== at.slice(0, 10);
  return resumes && otherDay && session.closed === null
    ? apply(session, { kind: 'resumed', same: true, at })
    : session;
}
