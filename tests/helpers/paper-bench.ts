import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Bench, ExitCode } from '../../engine/cli/bench.ts';
import { main } from '../../engine/cli/main.ts';

export interface Ran {
  readonly code: ExitCode;
  readonly out: string;
  readonly err: string;
}

/** A terminal on paper: files written are kept in memory and shine through those on the disk, the clock goes one
 *  minute forward for each look, and `lines` are what somebody types. */
export class PaperBench {
  readonly files = new Map<string, string>();
  /** Throws in place of writing. */
  full = false;
  /** Every status line that was shown. */
  readonly statuses: string[] = [];
  /** Somebody asks to stop once so many status lines were shown. */
  stopsAt: number | null = null;
  private minutes = 0;

  async run(args: readonly string[], lines: readonly string[] | null = null): Promise<Ran> {
    const out: string[] = [];
    const err: string[] = [];
    const typed = [...(lines ?? [])];
    const bench: Bench = {
      out: (text) => void out.push(text),
      err: (text) => void err.push(text),
      ask: async () => typed.shift() ?? null,
      interactive: lines !== null,
      status: (text) => void (text !== null && this.statuses.push(text)),
      stoppable: (work) => work(async () => this.stopsAt !== null && this.statuses.length >= this.stopsAt),
      width: 80,
      now: () => new Date(Date.UTC(2026, 2, 1, 8, this.minutes++)),
      readText: async (path) => this.files.get(path) ?? readFileSync(path, 'utf8'),
      readBytes: async (path) => {
        const text = this.files.get(path);
        return text === undefined ? readFileSync(path) : new TextEncoder().encode(text);
      },
      writeText: async (path, text) => {
        if (this.full) throw Object.assign(new Error('no space left on device'), { code: 'ENOSPC' });
        this.files.set(path, text);
      },
      exists: async (path) => this.files.has(path) || statSync(path, { throwIfNoEntry: false }) !== undefined,
      markdownUnder: async (path) =>
        this.files.has(path) || !statSync(path).isDirectory()
          ? [path]
          : readdirSync(path, { recursive: true })
              .map((name) => join(path, String(name)))
              .filter((name) => name.endsWith('.md'))
              .sort(),
    };
    const code = await main(args, bench);
    return { code, out: out.join('\n'), err: err.join('\n') };
  }
}
