import { describe, test } from 'vitest';
import { brokenFormulasRefused, formulasAgree } from '../properties/formula-libraries.ts';

// mathjs 15.2.0 (expressions with units) and js-quantities 1.8.0 (units); both are general-purpose libraries under free licences.
describe('formulas, compared with an expression evaluator and a units library', () => {
  test('agree on 2,000 random unit-correct expressions, relative 1e-12', () => {
    formulasAgree(2000);
  });

  test('refuse 2,000 random expressions in which unlike kinds meet, as the evaluator does', () => {
    brokenFormulasRefused(2000);
  });
});
