import { basename } from 'node:path';
import { localIso } from '../../job/index.ts';
import type { Job } from '../../model/job.ts';
import { replay, type Session } from '../../run/index.ts';
import { begun } from '../begun.ts';
import { type Bench, CannotRun, type ExitCode, exit } from '../bench.ts';
import type { Command } from '../command.ts';
import { equippedWith } from '../equipped-with.ts';
import { writeJob } from '../job-file.ts';
import { loadInstruments } from '../load-instruments.ts';
import { loadTreeFile } from '../load-tree-file.ts';
import { openJob } from '../open-job.ts';
import { readOptions } from '../read-options.ts';
import { showStanding } from '../show/show-standing.ts';
import { standingOf } from '../standing-of.ts';
import { takeAnswer } from '../take-answer.ts';
import { talk } from '../talk.ts';
import { withTreeBeside } from '../tree-beside.ts';
import { weighedOf } from '../weighed-of.ts';
import { withNamedTree } from '../with-named-tree.ts';

export const walk: Command = {
  summary: 'walk a tree at the terminal, or answer for a script',
  help: `Usage: deadboard walk TREE [--job FILE] [--board-sheet FILE]
                      [--instruments FILE] [--answer TEXT]… [--json]
       deadboard walk [TREE] --job FILE …
       deadboard walk TREE --job FILE --newer

Walks a tree (.md, or compiled .json). At a keyboard it asks and takes answers,
each kept in the job file before the next question. A job goes on with the tree
it was begun with. Where that hands it over to another tree, the other's file is
looked for beside the one named here, and kept with the job.

At the keyboard, suspects tells what the board may have and which readings say so,
next the check that would tell most for its minutes, and ? everything else.

  --job FILE          the job, made if there is none. Without it, a walk at the
                      keyboard makes a new file in this folder, and a scripted
                      walk keeps nothing
  --board TEXT        name of the board, for a new job
  --board-sheet FILE  sheet of this model of board, for a new job: its limits, its
                      jumpers, where to touch
  --instruments FILE  what is at the bench, an instrument on each line:
                      bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV
                      Values near a limit are in doubt from then on
  --newer             go on with the version of the tree that is named here
  --answer TEXT       one answer, as it would be typed; may be given many times:
                      'v5 = 4.98 V', 'bus := 66 MHz', done, yes, same, back,
                      'cannot read', 'retake v5 = 5.02', arranged, 'note: text',
                      'remedied: C14', close     (a bare value answers what is
                      asked; ? at the keyboard lists every form)
  --json              where the job stands, as JSON

Exit code 0: every answer taken; 1: an answer was refused (those before it are kept);
2: could not run.`,
  run,
};

const options = {
  job: { type: 'string' },
  board: { type: 'string' },
  'board-sheet': { type: 'string' },
  instruments: { type: 'string' },
  newer: { type: 'boolean' },
  answer: { type: 'string', multiple: true },
  json: { type: 'boolean' },
} as const;

async function run(args: readonly string[], bench: Bench): Promise<ExitCode> {
  const { values, positionals } = readOptions(args, options);
  const [treePath = null, ...more] = positionals;
  if (more.length > 0) throw new CannotRun('name one tree');
  if (values.newer === true && treePath === null) throw new CannotRun('name the newer tree');
  const answers = values.answer ?? [];
  const scripted = answers.length > 0 || values.json === true || !bench.interactive;
  const tree = treePath === null ? null : await loadTreeFile(bench, treePath);
  const job = await openJob(bench, tree, { job: values.job ?? null, sheet: values['board-sheet'] ?? null });
  const instruments =
    values.instruments === undefined ? null : await loadInstruments(bench, values.instruments);
  const path = values.job ?? (scripted ? null : newName(job));
  const at = localIso(bench.now());

  const write = async ({ entries, laterTrees }: Session): Promise<void> => {
    if (path !== null) await writeJob(bench, path, { ...job, laterTrees, entries });
  };
  const equipped = (next: Session): Session =>
    instruments === null ? next : equippedWith(next, instruments, next.entries.at(-1)?.at ?? at);
  const keep = async (next: Session): Promise<Session> => {
    const opened = next.entries.at(-1)?.kind === 'opened' ? equipped(next) : next;
    await write(opened);
    const ready = await withTreeBeside(bench, opened, treePath);
    if (ready !== opened) await write(ready);
    return ready;
  };

  const board = values.board ?? (scripted ? '' : null);
  const first = begun(replay(job.tree, job.entries, job), { board, answer: answers[0] ?? null, at });
  if (job.entries.length === 0) for (const misfit of first.loaded.boardMisfits) bench.err(misfit);
  const named =
    tree === null || job.entries.length === 0
      ? first
      : withNamedTree(bench, first, tree, { newer: values.newer === true, at });
  const start = named.opened ? equipped(named) : named;
  const grown = start.entries.length > job.entries.length;
  const session = grown ? await keep(start) : await withTreeBeside(bench, start, treePath);

  if (scripted) return script(bench, session, { answers, keep, json: values.json === true, job });
  if (path !== null) bench.out(`This job is kept in ${path}\n`);
  await talk(bench, session, keep);
  return exit.clean;
}

interface Script {
  readonly answers: readonly string[];
  readonly keep: (session: Session) => Promise<Session>;
  readonly json: boolean;
  readonly job: Job;
}

async function script(bench: Bench, start: Session, { answers, keep, json, job }: Script): Promise<ExitCode> {
  let session = start;
  for (const text of answers) {
    const taken = takeAnswer(session, text, bench);
    if (!taken.ok) {
      bench.err(`deadboard walk: "${text}" was not taken: ${taken.why}`);
      print(bench, job, session, json);
      return exit.problems;
    }
    session = await keep(taken.session);
  }
  print(bench, job, session, json);
  return exit.clean;
}

function print(bench: Bench, job: Job, session: Session, json: boolean): void {
  const standing = standingOf(job, session);
  const text = json
    ? JSON.stringify({ ...standing, ...weighedOf(session) }, null, 2)
    : showStanding(standing, session, bench.width);
  bench.out(text);
}

/** The id of a compiled tree may hold anything: no part of it names another folder. */
const newName = (job: Job): string => `${basename(job.id)}.job.json`;
