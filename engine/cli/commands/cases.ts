import { caseOf } from '../../cases/index.ts';
import { openFile } from '../../foreign/open-file.ts';
import { localIso } from '../../job/index.ts';
import { junitOf } from '../../reports/index.ts';
import { type Bench, CannotRun, type ExitCode, exit } from '../bench.ts';
import type { Command } from '../command.ts';
import { readJob } from '../job-file.ts';
import { readFile, writeFile } from '../read-file.ts';
import { readOptions } from '../read-options.ts';
import { showWalked, suitesOf, walkedSummary } from '../show/show-walked.ts';
import { walkCases } from '../walk-cases.ts';

export const cases: Command = {
  summary: 'walk every case, and every fault of every tree by its own readings',
  help: `Usage: deadboard cases PATHS… [--junit FILE] [--json]
       deadboard cases --from JOB --tree PATH [--board PATH]

Walks each case under PATHS and says whether it led where it must. A tree under PATHS,
or named by a case, is walked once for each of its faults and all that the fault can show.
A walk that came out elsewhere is told with its path and the section where it parted.

  --junit FILE   the results as JUnit XML besides
  --json         the results as JSON
  --from JOB     print a job as a case instead; --tree and --board are the paths it names

Exit code 0: all led where they must; 1: some did not; 2: could not run.`,
  run,
};

async function run(args: readonly string[], bench: Bench): Promise<ExitCode> {
  const { values, positionals } = readOptions(args, {
    junit: { type: 'string' },
    json: { type: 'boolean' },
    from: { type: 'string' },
    tree: { type: 'string' },
    board: { type: 'string' },
  });
  if (values.from !== undefined) return printCase(bench, values.from, values.tree, values.board);
  if (positionals.length === 0)
    throw new CannotRun('name the cases and trees to walk, or a folder with them');

  const { caseFiles, treeFiles } = await sorted(positionals, bench);
  const results = await walkCases(bench, caseFiles, treeFiles);
  if (results.length === 0) throw new CannotRun(`no cases and no trees under "${positionals.join('", "')}"`);

  if (values.junit !== undefined) {
    const text = junitOf(suitesOf(results), localIso(bench.now()));
    await writeFile(bench, values.junit, text, 'Free some room or name another file');
  }
  if (values.json) bench.out(JSON.stringify(results, null, 2));
  else {
    bench.out(showWalked(results));
    bench.err(walkedSummary(results));
  }
  return results.some(({ problem }) => problem !== null) ? exit.problems : exit.clean;
}

async function printCase(
  bench: Bench,
  job: string,
  tree: string | undefined,
  board: string | undefined,
): Promise<ExitCode> {
  if (tree === undefined) throw new CannotRun('name the tree that the case walks: --tree ../trees/tree.md');
  const read = await readJob(bench, job);
  bench.out(caseOf(read, { title: read.tree.title, tree, board: board ?? null }).trimEnd());
  return exit.clean;
}

/** The cases and the trees under some paths. */
async function sorted(
  paths: readonly string[],
  bench: Bench,
): Promise<{ caseFiles: string[]; treeFiles: string[] }> {
  const caseFiles: string[] = [];
  const treeFiles: string[] = [];
  for (const named of paths) {
    const found = await bench.markdownUnder(named).catch(() => {
      throw new CannotRun(`cannot read "${named}": there is no such file or folder`);
    });
    for (const path of found) {
      const { kind } = openFile(await readFile(bench, path));
      if (kind === 'case') caseFiles.push(path);
      if (kind === 'tree') treeFiles.push(path);
    }
  }
  return { caseFiles, treeFiles };
}
