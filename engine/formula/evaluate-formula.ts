import type Fraction from 'fraction.js';
import type { Formula } from '../model/formula.ts';
import { fractionOf } from '../quantity/index.ts';
import { functionNamed } from './functions/index.ts';
import { namesIn } from './names-in.ts';

export type Evaluated =
  /** In the base unit. */
  | { readonly kind: 'value'; readonly value: Fraction }
  | { readonly kind: 'missing'; readonly names: readonly string[] }
  /** It divides by zero. */
  | { readonly kind: 'undefined' };

/** @param lookUp a name's value in its base unit, or null where it is not known */
export function evaluateFormula(formula: Formula, lookUp: (name: string) => Fraction | null): Evaluated {
  const missing = namesIn(formula).filter((name) => lookUp(name) === null);
  if (missing.length > 0) return { kind: 'missing', names: missing };
  const value = evaluate(formula, lookUp);
  return value === null ? { kind: 'undefined' } : { kind: 'value', value };
}

const literals = new WeakMap<Formula, Fraction>();

type Values = (name: string) => Fraction | null;
type Node<Kind> = Extract<Formula, { readonly kind: Kind }>;

const evaluators: {
  readonly [Kind in Formula['kind']]: (node: Node<Kind>, lookUp: Values) => Fraction | null;
} = {
  quantity: (node) => {
    const known = literals.get(node) ?? fractionOf(node.value);
    literals.set(node, known);
    return known;
  },
  name: ({ name }, lookUp) => lookUp(name),
  negate: ({ of }, lookUp) => evaluate(of, lookUp)?.neg() ?? null,
  binary: ({ operator, left, right }, lookUp) => {
    const a = evaluate(left, lookUp);
    const b = evaluate(right, lookUp);
    return a && b && operators[operator](a, b);
  },
  call: ({ name, arguments: args }, lookUp) => {
    const values = args.map((arg) => evaluate(arg, lookUp));
    return values.every((value) => value !== null) ? (functionNamed(name)?.evaluate(values) ?? null) : null;
  },
};

const operators: Readonly<Record<Node<'binary'>['operator'], (a: Fraction, b: Fraction) => Fraction | null>> =
  {
    '+': (a, b) => a.add(b),
    '-': (a, b) => a.sub(b),
    '*': (a, b) => a.mul(b),
    '/': (a, b) => (b.n === 0n ? null : a.div(b)),
  };

function evaluate<Kind extends Formula['kind']>(node: Node<Kind>, lookUp: Values): Fraction | null {
  return evaluators[node.kind as Kind](node, lookUp);
}
