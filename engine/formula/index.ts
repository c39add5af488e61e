export { anything, type Bounds, boundsOf, type End, exactly, noValue } from './bounds/index.ts';
export { checkFormula } from './check-formula.ts';
export { type Dimension, dimensionOf, fits } from './dimension.ts';
export { evaluateFormula } from './evaluate-formula.ts';
export { placed, spanOfFormula } from './formula-spans.ts';
export { namesIn } from './names-in.ts';
export { parseFormula } from './parse-formula.ts';
export { substitute } from './substitute.ts';
