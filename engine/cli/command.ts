import type { Bench, ExitCode } from './bench.ts';

/** One word after `deadboard`. */
export interface Command {
  /** One line for the list of commands. */
  readonly summary: string;
  /** The whole page behind `--help`. */
  readonly help: string;
  readonly run: (args: readonly string[], bench: Bench) => Promise<ExitCode>;
}
