import { type ParseArgsConfig, parseArgs } from 'node:util';
import { CannotRun } from './bench.ts';

type Options = NonNullable<ParseArgsConfig['options']>;

/** Options and file names of a command line; what it does not know ends the command with a sentence. */
export function readOptions<const T extends Options>(args: readonly string[], options: T) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    throw new CannotRun(`${(error as Error).message.split('. ')[0]}. --help tells what there is`);
  }
}
