import { checkFile } from '../../check-file.ts';
import { describe, diagnosticJson, formatDiagnostic } from '../../diagnostics/index.ts';
import { localIso } from '../../job/index.ts';
import { type CheckedFile, checkSuite, junitOf, sarifOf } from '../../reports/index.ts';
import { diagnosticsPage, version } from '../about.ts';
import { type Bench, CannotRun, type ExitCode, exit } from '../bench.ts';
import { BenchLibrary, libraryPath } from '../bench-library.ts';
import type { Command } from '../command.ts';
import { readFile, writeFile } from '../read-file.ts';
import { readOptions } from '../read-options.ts';
import { notExactLines } from '../show/not-exact-lines.ts';

export const check: Command = {
  summary: 'check trees and the files beside them, and tell every problem with its place and remedy',
  help: `Usage: deadboard check FILES… [--json] [--sarif FILE] [--junit FILE]

Checks trees, procedures, shared readings, board sheets and cases. A folder stands
for every .md file under it that begins with front-matter. Files that these name are
looked at as well, and told about where they are named. Trees are walked in every way
a board can answer; where that would be too many, the section is told. Each problem begins
"file:line:column: severity code: sentence".

  --json         one JSON array with a record for each problem
  --sarif FILE   the problems as a SARIF 2.1.0 log besides
  --junit FILE   a case for each file as JUnit XML besides, failed where it has errors

Exit code 0: clean, or warnings and hints only; 1: errors; 2: could not run.`,
  run,
};

async function run(args: readonly string[], bench: Bench): Promise<ExitCode> {
  const { values, positionals } = readOptions(args, {
    json: { type: 'boolean' },
    sarif: { type: 'string' },
    junit: { type: 'string' },
  });
  if (positionals.length === 0) throw new CannotRun('name the files or folders to check');
  const named = (await Promise.all(positionals.map((path) => textsUnder(path, bench)))).flat();
  const library = new BenchLibrary(bench);
  for (const { path, text } of named) library.add(path, text);
  const files: CheckedFile[] = [];
  for (const { path, text } of named) {
    const place = { path: libraryPath(path) };
    const checked = await library.with((files) => checkFile(text, { ...place, library: files }));
    files.push({ path, text, diagnostics: checked.diagnostics });
    for (const line of notExactLines(path, checked.analysis)) bench.err(line);
  }
  if (files.length === 0) throw new CannotRun(`no files to check under "${positionals.join('", "')}"`);

  await report(bench, values.sarif, () => sarifOf(files, { version, helpUri: diagnosticsPage }));
  await report(bench, values.junit, () => junitOf([checkSuite(files)], localIso(bench.now())));
  const found = files.flatMap((file) => file.diagnostics.map((diagnostic) => ({ file, diagnostic })));
  if (values.json) {
    bench.out(
      JSON.stringify(
        found.map(({ file, diagnostic }) => diagnosticJson(file.path, file.text, diagnostic)),
        null,
        2,
      ),
    );
  } else {
    for (const { file, diagnostic } of found)
      bench.out(`${formatDiagnostic(file.path, file.text, diagnostic)}\n`);
    bench.err(
      summary(
        files.length,
        found.map(({ diagnostic }) => describe(diagnostic).severity),
      ),
    );
  }
  return found.some(({ diagnostic }) => describe(diagnostic).severity === 'error')
    ? exit.problems
    : exit.clean;
}

async function report(bench: Bench, path: string | undefined, text: () => string): Promise<void> {
  if (path !== undefined) await writeFile(bench, path, text(), 'Free some room or name another file');
}

/** The file itself, or every file of this language under a folder. */
async function textsUnder(named: string, bench: Bench): Promise<readonly Omit<CheckedFile, 'diagnostics'>[]> {
  let paths: readonly string[];
  try {
    paths = await bench.markdownUnder(named);
  } catch {
    throw new CannotRun(`cannot read "${named}": there is no such file or folder`);
  }
  const texts = await Promise.all(paths.map(async (path) => ({ path, text: await readFile(bench, path) })));
  return texts.filter(({ path, text }) => path === named || /^\uFEFF?---[ \t]*\r?\n/.test(text));
}

function summary(files: number, severities: readonly string[]): string {
  const count = (severity: string): number => severities.filter((one) => one === severity).length;
  const said = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`;
  const parts = [
    said(count('error'), 'error'),
    said(count('warning'), 'warning'),
    said(count('hint'), 'hint'),
  ];
  return `${said(files, 'file')}: ${parts.join(', ')}`;
}
