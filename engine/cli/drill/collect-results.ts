import type { DrillResult } from '../../practice/index.ts';
import { problemsOfResult } from '../../practice/validate-result.ts';
import { type Bench, CannotRun } from '../bench.ts';
import { readFile } from '../read-file.ts';
import { columns } from '../show/columns.ts';

/** The results that a class handed in. A file that is none ends the command. */
export async function collectResults(
  bench: Bench,
  paths: readonly string[],
): Promise<readonly DrillResult[]> {
  const results: DrillResult[] = [];
  for (const path of paths) {
    const text = await readFile(bench, path);
    let data: unknown;
    try {
      data = JSON.parse(text);
    } catch (error) {
      throw new CannotRun(`"${path}" is not JSON: ${(error as Error).message}`);
    }
    const problems = problemsOfResult(data);
    if (problems.length > 0)
      throw new CannotRun(`"${path}" is no result of a drill: ${problems.slice(0, 3).join('; ')}`);
    results.push(data as DrillResult);
  }
  return results;
}

/** One row for each trainee and board: who was quickest and right at first stands above. */
export function resultTable(results: readonly DrillResult[]): string {
  const rows = results.toSorted(
    (a, b) =>
      a.code.localeCompare(b.code) ||
      Number(b.rightAtFirst) - Number(a.rightAtFirst) ||
      a.minutes - b.minutes,
  );
  const boards = new Set(results.map(({ code }) => code)).size;
  return [
    columns([
      ['name', 'board', 'outcome', 'right at first', 'minutes', 'best', 'hints', 'passed over', 'harm'],
      ...rows.map((one) => [
        one.name,
        one.code,
        one.outcome,
        one.rightAtFirst ? 'yes' : 'no',
        String(one.minutes),
        String(one.best),
        String(one.hints),
        String(one.passedOver),
        String(one.harm),
      ]),
    ]),
    '',
    `  ${results.length} ${results.length === 1 ? 'result' : 'results'}, ${boards} ${boards === 1 ? 'board' : 'boards'}, right at first: ${results.filter(({ rightAtFirst }) => rightAtFirst).length}`,
  ].join('\n');
}
