/** The world as the commands see it: terminal, disk and clock. Tests give them another one. */
export interface Bench {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** One line from the keyboard, or null at its end. */
  readonly ask: (prompt: string) => Promise<string | null>;
  /** Whether somebody sits at the keyboard. */
  readonly interactive: boolean;
  /** One line at the terminal that each call writes anew; null takes it away. Nothing where nobody watches. */
  readonly status: (text: string | null) => void;
  /** Does work that somebody may end early (Ctrl C): `stopped` lets the world in and says whether that was asked for. */
  readonly stoppable: <Value>(work: (stopped: () => Promise<boolean>) => Promise<Value>) => Promise<Value>;
  /** Columns of the terminal. */
  readonly width: number;
  readonly now: () => Date;
  readonly readText: (path: string) => Promise<string>;
  readonly readBytes: (path: string) => Promise<Uint8Array>;
  /** Whole or not at all: a crash in the middle leaves the old file. */
  readonly writeText: (path: string, text: string) => Promise<void>;
  readonly exists: (path: string) => Promise<boolean>;
  /** Every `.md` file under a folder, sorted, or the path itself where it is a file. */
  readonly markdownUnder: (path: string) => Promise<readonly string[]>;
}

/** Ended because something outside the files went wrong: exit code 2. */
export class CannotRun extends Error {}

/** Exit codes of every command. */
export const exit = { clean: 0, problems: 1, couldNotRun: 2 } as const;
export type ExitCode = (typeof exit)[keyof typeof exit];
