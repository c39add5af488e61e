import { nearest } from '../names/nearest.ts';
import { type Bench, CannotRun, type ExitCode, exit } from './bench.ts';
import type { Command } from './command.ts';
import { cases } from './commands/cases.ts';
import { check } from './commands/check.ts';
import { figures } from './commands/figures.ts';
import { jumpers } from './commands/jumpers.ts';
import { practise } from './commands/practise.ts';
import { record } from './commands/record.ts';
import { walk } from './commands/walk.ts';
import { write } from './commands/write.ts';

const commands: Readonly<Record<string, Command>> = {
  check,
  walk,
  cases,
  figures,
  practise,
  record,
  jumpers,
  write,
};

const usage = (): string =>
  [
    'deadboard: from a dead board, check by check, to a proven repair',
    '',
    'Usage: deadboard COMMAND …',
    '',
    ...Object.entries(commands).map(([name, { summary }]) => `  ${name.padEnd(8)} ${summary}`),
    '',
    'deadboard COMMAND --help tells the rest.',
  ].join('\n');

/** Runs one command line (without the program's own name) and gives the exit code. */
export async function main(args: readonly string[], bench: Bench): Promise<ExitCode> {
  const [word, ...rest] = args;
  if (word === undefined || word === '--help' || word === 'help') {
    bench.out(usage());
    return word === undefined ? exit.couldNotRun : exit.clean;
  }
  const command = Object.hasOwn(commands, word) ? commands[word] : undefined;
  if (command === undefined) {
    const [near] = nearest(word, Object.keys(commands));
    bench.err(
      `deadboard: there is no command "${word}"${near === undefined ? '' : `; did you mean "${near}"?`}`,
    );
    bench.err('deadboard --help lists the commands');
    return exit.couldNotRun;
  }
  if (rest.includes('--help')) {
    bench.out(command.help);
    return exit.clean;
  }
  try {
    return await command.run(rest, bench);
  } catch (error) {
    if (!(error instanceof CannotRun)) throw error;
    bench.err(`deadboard ${word}: ${error.message}`);
    return exit.couldNotRun;
  }
}
