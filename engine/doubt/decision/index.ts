export { acceptanceInterval } from './acceptance-interval.ts';
export { conformanceProbability, type Tolerance } from './conformance-probability.ts';
export { type FourWay, fourWayVerdict } from './four-way-verdict.ts';
export { globalRisks } from './global-risks.ts';
export { standardUncertainty } from './standard-uncertainty.ts';
export { type Verdict, verdictOf } from './verdict-of.ts';
