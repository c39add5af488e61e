export { caseOf } from './case-of.ts';
export type { CaseProblem, CaseResult, Parting } from './case-result.ts';
export { compileCase } from './compile-case.ts';
export { lostText } from './lost-text.ts';
export { problemText } from './problem-text.ts';
export { runCase } from './run-case.ts';
export { type FaultResult, type LostWalk, runFaults } from './run-faults.ts';
