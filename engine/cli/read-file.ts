import { type Bench, CannotRun } from './bench.ts';

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'it may not be read',
  EISDIR: 'it is a folder',
};

const reasonOf = (error: unknown): string => {
  const { code, message } = error as NodeJS.ErrnoException;
  return reasons[code ?? ''] ?? message;
};

export async function readFile(bench: Bench, path: string): Promise<string> {
  try {
    return await bench.readText(path);
  } catch (error) {
    throw new CannotRun(`cannot read "${path}": ${reasonOf(error)}`);
  }
}

/** Says what was kept when a file cannot be written. */
export async function writeFile(bench: Bench, path: string, text: string): Promise<void> {
  try {
    await bench.writeText(path, text);
  } catch (error) {
    throw new CannotRun(
      `cannot write "${path}": ${reasonOf(error)}. The file is as it was before this answer; free some room or name another file, then give the answer again`,
    );
  }
}
