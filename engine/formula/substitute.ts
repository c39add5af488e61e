import type { Formula } from '../model/formula.ts';

/** The formula with names put in the place of others; `of` gives null for a name that stays. */
export function substitute(formula: Formula, of: (name: string) => Formula | null): Formula {
  switch (formula.kind) {
    case 'quantity':
      return formula;
    case 'name':
      return of(formula.name) ?? formula;
    case 'negate':
      return { ...formula, of: substitute(formula.of, of) };
    case 'binary':
    case 'compare':
      return { ...formula, left: substitute(formula.left, of), right: substitute(formula.right, of) };
    case 'call':
      return { ...formula, arguments: formula.arguments.map((argument) => substitute(argument, of)) };
  }
}
