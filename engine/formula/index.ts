export { checkFormula } from './check-formula.ts';
export { type Dimension, dimensionOf, fits } from './dimension.ts';
export { type Evaluated, evaluateFormula } from './evaluate-formula.ts';
export { placed, spanOfFormula } from './formula-spans.ts';
export { namesIn } from './names-in.ts';
export { type FormulaContext, parseFormula } from './parse-formula.ts';
