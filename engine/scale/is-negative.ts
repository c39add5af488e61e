import type { Formula } from '../model/formula.ts';
import type { Setting } from '../model/setting.ts';
import { fromStored } from '../quantity/index.ts';

/** Whether a formula stands for a negative rail, as far as it can be told: a setting counts as positive
 *  unless its usual value is not. */
export function isNegative(formula: Formula, settings: readonly Setting[]): boolean {
  return signOf(formula, settings) < 0;
}

function signOf(formula: Formula, settings: readonly Setting[]): number {
  switch (formula.kind) {
    case 'quantity':
      return fromStored(formula).compare(0);
    case 'name': {
      const setting = settings.find(({ id }) => id === formula.name);
      return setting?.kind === 'quantity' && setting.usual !== null
        ? fromStored(setting.usual).compare(0)
        : 1;
    }
    case 'negate':
      return -signOf(formula.of, settings);
    case 'binary': {
      const left = signOf(formula.left, settings);
      const right = signOf(formula.right, settings);
      if (formula.operator === '*' || formula.operator === '/') return left * right;
      return left === (formula.operator === '-' ? -right : right) ? left : 1;
    }
    default:
      return 1;
  }
}
