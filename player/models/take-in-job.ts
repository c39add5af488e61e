import { upgradeJob } from '../../engine/job/upgrade-job.ts';
import { problemsOfJob } from '../../engine/job/validate-job.ts';
import type { Job } from '../../engine/model/job.ts';
import { replay } from '../../engine/run/index.ts';
import type { Ports } from '../ports/ports.ts';
import { storeProblemWords } from './store-problem-words.ts';
import { summaryOf } from './summary-of.ts';

interface JobFile {
  readonly name: string;
  readonly text: string;
}

/** Takes a job file in and says what became of it. A job that is here already gets the entries it
 *  lacks; one that parted from it is put beside it as a copy. */
export async function takeInJob(ports: Ports, file: JobFile): Promise<string> {
  const parsed = parseJson(file.text);
  const problems = parsed === undefined ? ['it is not a job file'] : problemsOfJob(parsed);
  if (problems.length > 0)
    return `"${file.name}" was not taken in: ${problems[0]}. Nothing on the bench changed`;
  const job = parsed as Job;
  const here = await ports.store.load(job.id);
  if (!here.ok && here.problem.kind !== 'gone') return storeProblemWords(here.problem);
  if (!here.ok) return create(ports, job, 'is on the bench');
  const [mine, theirs] = [here.value.entries, job.entries];
  const shared = Math.min(mine.length, theirs.length);
  const same = mine
    .slice(0, shared)
    .every((entry, index) => JSON.stringify(entry) === JSON.stringify(theirs[index]));
  if (!same) {
    const copy = { ...job, id: ports.browser.newId() };
    return create(
      ports,
      copy,
      'went another way than the one on the bench, so it stands beside it as a copy',
    );
  }
  if (theirs.length <= mine.length)
    return `"${nameOf(job)}" is on the bench already, with everything in this file`;
  for (const tree of job.laterTrees) {
    const kept = await ports.store.addTree(job.id, tree);
    if (!kept.ok) return storeProblemWords(kept.problem);
  }
  const summary = summaryOf(job.id, replay(here.value.tree, theirs, { ...job, board: here.value.board }));
  const stored = await ports.store.append(job.id, mine.length, theirs.slice(mine.length), summary);
  if (!stored.ok) return storeProblemWords(stored.problem);
  ports.windows.tell({ job: job.id, entries: theirs.length });
  return `"${nameOf(job)}" got ${theirs.length - mine.length} more entries from this file`;
}

async function create(ports: Ports, job: Job, what: string): Promise<string> {
  const stored = await ports.store.create(job, summaryOf(job.id, replay(job.tree, job.entries, job)));
  return stored.ok ? `"${nameOf(job)}" ${what}` : storeProblemWords(stored.problem);
}

const nameOf = (job: Job): string => job.entries.find((entry) => entry.kind === 'opened')?.board ?? job.id;

function parseJson(text: string): unknown {
  try {
    return upgradeJob(JSON.parse(text));
  } catch {
    return undefined;
  }
}
