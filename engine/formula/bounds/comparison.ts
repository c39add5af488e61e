import Fraction from 'fraction.js';
import type { Formula } from '../../model/formula.ts';
import { type Bounds, type End, needing } from './bounds.ts';

type Operator = Extract<Formula, { readonly kind: 'compare' }>['operator'];

/** Whether some value of one side can stand above some value of the other: `equal` counts where both ends are values. */
function canExceed(high: End | null, low: End | null, equal: boolean): boolean {
  if (high === null || low === null) return true;
  const order = high.value.compare(low.value);
  return order > 0 || (equal && order === 0 && high.closed && low.closed);
}

/** 1 where the comparison can hold, 0 where it can fail, both where it is open. */
export function compared(operator: Operator, left: Bounds, right: Bounds): Bounds {
  const [upper, lower] = operator.startsWith('>') ? [left, right] : [right, left];
  const equal = operator.endsWith('=');
  const holds = canExceed(upper.high, lower.low, equal);
  const fails = canExceed(lower.high, upper.low, !equal);
  return {
    low: { value: new Fraction(fails ? 0 : 1), closed: true },
    high: { value: new Fraction(holds ? 1 : 0), closed: true },
    ...needing([left, right]),
  };
}
