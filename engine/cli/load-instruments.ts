import { parseInstrument } from '../doubt/index.ts';
import type { Instrument } from '../model/instrument.ts';
import { type Bench, CannotRun } from './bench.ts';
import { readFile } from './read-file.ts';

/** The instruments of a file, one on a line as a technician types them; empty lines part them. */
export async function loadInstruments(bench: Bench, path: string): Promise<readonly Instrument[]> {
  const lines = (await readFile(bench, path)).split(/\r?\n/);
  const found: Instrument[] = [];
  for (const [index, line] of lines.entries()) {
    if (line.trim() === '') continue;
    const at = `"${path}", line ${index + 1}`;
    const read = parseInstrument(line);
    if (!read.ok) {
      const { text, offers } = read.refusal;
      throw new CannotRun(`${at}: ${text}${offers.length === 0 ? '' : `. A line reads: ${offers[0]}`}`);
    }
    if (found.some(({ name }) => name === read.value.name))
      throw new CannotRun(
        `${at}: another instrument is called "${read.value.name}": give each a name of its own`,
      );
    found.push(read.value);
  }
  return found;
}
