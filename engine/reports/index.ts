export { checkSuite } from './check-suite.ts';
export { junitOf, type ReportCase, type ReportSuite } from './junit.ts';
export { type CheckedFile, type SarifOptions, sarifOf } from './sarif.ts';
