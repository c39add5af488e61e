import { describe } from '../diagnostics/describe.ts';
import { formatDiagnostic } from '../diagnostics/format-diagnostic.ts';
import type { ReportCase, ReportSuite } from './junit.ts';
import type { CheckedFile } from './sarif.ts';

/** Checked files as a suite: a case for each file, failed where it has an error. */
export const checkSuite = (files: readonly CheckedFile[]): ReportSuite => ({
  name: 'deadboard check',
  cases: files.map(fileCase),
});

function fileCase({ path, text, diagnostics }: CheckedFile): ReportCase {
  const errors = diagnostics.filter((diagnostic) => describe(diagnostic).severity === 'error');
  return {
    name: path,
    file: path,
    seconds: null,
    failure:
      errors.length === 0
        ? null
        : {
            message: errors.length === 1 ? '1 error' : `${errors.length} errors`,
            text: errors.map((error) => formatDiagnostic(path, text, error)).join('\n\n'),
          },
  };
}
