export { describe } from './describe.ts';
export { type DiagnosticJson, diagnosticJson } from './diagnostic-json.ts';
export { formatDiagnostic } from './format-diagnostic.ts';
export { lineOf } from './line-and-column.ts';
