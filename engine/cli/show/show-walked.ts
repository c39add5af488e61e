import type { ReportCase, ReportSuite } from '../../reports/index.ts';
import type { Walked } from '../walked.ts';

/** The results as suites of a report. */
export const suitesOf = (results: readonly Walked[]): readonly ReportSuite[] =>
  (['cases', 'faults'] as const).map((suite) => ({
    name: suite,
    cases: results.filter((one) => one.suite === suite).map(reportOf),
  }));

const reportOf = ({ name, file, problem, path }: Walked): ReportCase => ({
  name,
  file,
  seconds: null,
  failure: problem === null ? null : { message: problem, text: path.join(' > ') },
});

/** A line for each walk, and under one that went elsewhere what happened and the way it went. */
export const showWalked = (results: readonly Walked[]): string =>
  results
    .flatMap(({ name, note, problem, path }) => [
      `${problem === null ? 'passed' : 'FAILED'}  ${name}${note === '' ? '' : ` (${note})`}`,
      ...(problem === null ? [] : [`        ${problem}`]),
      ...(path.length > 0 && problem !== null ? [`        path: ${path.join(' > ')}`] : []),
    ])
    .join('\n');

export function walkedSummary(results: readonly Walked[]): string {
  const failed = results.filter(({ problem }) => problem !== null).length;
  const count = (suite: Walked['suite'], one: string): string => {
    const found = results.filter((each) => each.suite === suite).length;
    return `${found} ${one}${found === 1 ? '' : 's'}`;
  };
  const how = failed === 0 ? 'all led where they must' : `${failed} did not lead where they must`;
  return `${count('cases', 'case')}, ${count('faults', 'fault')}: ${how}`;
}
