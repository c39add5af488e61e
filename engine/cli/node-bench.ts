import { open, readdir, readFile, rename, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { createInterface, type Interface } from 'node:readline/promises';
import { setImmediate } from 'node:timers/promises';
import type { Bench } from './bench.ts';

/** The real terminal, disk and clock. `close` lets the process end. */
export function nodeBench(): Bench & { readonly close: () => void } {
  let lines: Interface | null = null;
  return {
    out: (text) => void process.stdout.write(`${text}\n`),
    err: (text) => void process.stderr.write(`${text}\n`),
    ask: async (prompt) => {
      lines ??= createInterface({ input: process.stdin, output: process.stdout });
      const ended = new Promise<null>((resolve) => lines?.once('close', () => resolve(null)));
      return Promise.race([lines.question(prompt), ended]);
    },
    interactive: process.stdin.isTTY === true,
    status: (text) => {
      if (process.stderr.isTTY) process.stderr.write(`\r\x1b[K${text ?? ''}`);
    },
    stoppable,
    width: Math.max(40, Math.min(process.stdout.columns ?? 80, 100)),
    now: () => new Date(),
    readText: (path) => readFile(path, 'utf8'),
    readBytes: (path) => readFile(path),
    writeText,
    exists: (path) =>
      stat(path).then(
        () => true,
        () => false,
      ),
    markdownUnder,
    close: () => lines?.close(),
  };
}

async function stoppable<Value>(work: (stopped: () => Promise<boolean>) => Promise<Value>): Promise<Value> {
  let asked = false;
  const ask = (): void => {
    asked = true;
  };
  process.on('SIGINT', ask);
  try {
    return await work(async () => {
      await setImmediate();
      return asked;
    });
  } finally {
    process.off('SIGINT', ask);
  }
}

async function writeText(path: string, text: string): Promise<void> {
  const beside = `${path}.${process.pid}.part`;
  const file = await open(beside, 'w');
  try {
    await file.writeFile(text);
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(beside, path);
}

async function markdownUnder(path: string): Promise<readonly string[]> {
  if (!(await stat(path)).isDirectory()) return [path];
  const names = await readdir(path, { recursive: true, withFileTypes: true });
  return names
    .filter(
      (entry) => entry.isFile() && entry.name.endsWith('.md') && !entry.parentPath.includes('node_modules'),
    )
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}
