import { readdirSync, readFileSync } from 'node:fs';

export const fixtureFolder = 'tests/fixtures/diagnostics';

export const fixtureNames = (): readonly string[] =>
  readdirSync(fixtureFolder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();

export const readInput = (code: string): string =>
  inflated(readFileSync(`${fixtureFolder}/${code}/input.md`, 'utf8'));

/** Fixtures for limits are stored small: `{{word × 3}}` stands for `word word word`, and `\n` for a line end. */
const inflated = (text: string): string =>
  text.replace(/\{\{(.+?) × (\d+)\}\}/g, (_, part: string, times: string) =>
    Array(Number(times))
      .fill(part.replaceAll('\\n', '\n'))
      .join(part.endsWith('\\n') ? '' : ' '),
  );
