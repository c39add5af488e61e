import { test } from 'vitest';
import { brokenFormulasRefused, formulasAgree } from '../properties/formula-libraries.ts';

test('formulas agree with mathjs and js-quantities on 10,000 random unit-correct expressions, relative 1e-12', () => {
  formulasAgree(10_000);
});

test('10,000 random expressions in which unlike kinds meet are refused at both operands', () => {
  brokenFormulasRefused(10_000);
});
