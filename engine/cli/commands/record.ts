import { recordMarkdown, recordOf } from '../../job/index.ts';
import { type Bench, CannotRun, type ExitCode, exit } from '../bench.ts';
import type { Command } from '../command.ts';
import { readJob } from '../job-file.ts';
import { readOptions } from '../read-options.ts';

export const record: Command = {
  summary: 'print the record of a job',
  help: `Usage: deadboard record JOB [--for owner|bench] [--json]

Prints what came in, what was found and done, and what proves it, as Markdown.

  --for owner   the page for the owner
  --for bench   the same with every reading, what is ruled out, and notes (default)
  --json        the record as JSON

Exit code 0: printed; 2: could not run.`,
  run,
};

async function run(args: readonly string[], bench: Bench): Promise<ExitCode> {
  const { values, positionals } = readOptions(args, { json: { type: 'boolean' }, for: { type: 'string' } });
  const [path, ...more] = positionals;
  if (path === undefined || more.length > 0) throw new CannotRun('name one job file');
  const audience = values.for ?? 'bench';
  if (audience !== 'owner' && audience !== 'bench')
    throw new CannotRun(`--for is "owner" or "bench", not "${audience}"`);
  const found = recordOf(await readJob(bench, path));
  bench.out(values.json ? JSON.stringify(found, null, 2) : recordMarkdown(found, audience).trimEnd());
  return exit.clean;
}
