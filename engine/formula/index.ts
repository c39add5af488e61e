export { checkFormula } from './check-formula.ts';
export { combine, common, type Dimension, dimensionOf, fits, isPlain, plainNumber } from './dimension.ts';
export { type Evaluated, evaluateFormula } from './evaluate-formula.ts';
export { placed, spanOfFormula } from './formula-spans.ts';
export { functionNames } from './functions/index.ts';
export { namesIn } from './names-in.ts';
export { type FormulaContext, parseFormula } from './parse-formula.ts';
