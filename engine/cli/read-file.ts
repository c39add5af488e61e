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

/** @param mend what to do where the file cannot be written: a sentence without its full stop */
export async function writeFile(bench: Bench, path: string, text: string, mend: string): Promise<void> {
  try {
    await bench.writeText(path, text);
  } catch (error) {
    throw new CannotRun(`cannot write "${path}": ${reasonOf(error)}. ${mend}`);
  }
}
