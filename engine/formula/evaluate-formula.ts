import Fraction from 'fraction.js';
import type { Formula } from '../model/formula.ts';
import { fromStored } from '../quantity/index.ts';
import { functionNamed } from './functions/index.ts';

type Evaluated =
  /** In the base unit; 1 or 0 for a comparison that holds or does not. */
  | { readonly kind: 'value'; readonly value: Fraction }
  | { readonly kind: 'missing'; readonly names: readonly string[] }
  /** It divides by zero, or nothing is left to compare. */
  | { readonly kind: 'undefined' };

/** @param lookUp a name's value in its base unit, or null where it is not known */
export function evaluateFormula(formula: Formula, lookUp: (name: string) => Fraction | null): Evaluated {
  const missing: string[] = [];
  const value = evaluate(formula, { lookUp, missing });
  if (missing.length > 0) return { kind: 'missing', names: [...new Set(missing)] };
  return value === null ? { kind: 'undefined' } : { kind: 'value', value };
}

interface Evaluating {
  readonly lookUp: (name: string) => Fraction | null;
  /** Names without a value, as they are met. */
  readonly missing: string[];
}

type Node<Kind> = Extract<Formula, { readonly kind: Kind }>;

const evaluators: {
  readonly [Kind in Formula['kind']]: (node: Node<Kind>, at: Evaluating) => Fraction | null;
} = {
  quantity: (node) => fromStored(node),
  name: ({ name }, { lookUp, missing }) => {
    const value = lookUp(name);
    if (value === null) missing.push(name);
    return value;
  },
  negate: ({ of }, at) => evaluate(of, at)?.neg() ?? null,
  binary: ({ operator, left, right }, at) => {
    const a = evaluate(left, at);
    const b = evaluate(right, at);
    return a && b && operators[operator](a, b);
  },
  compare: ({ operator, left, right }, at) => {
    const a = evaluate(left, at);
    const b = evaluate(right, at);
    return a && b && new Fraction(comparisons[operator](a.compare(b)) ? 1 : 0);
  },
  call: ({ name, arguments: args }, at) => {
    const row = functionNamed(name);
    if (row?.leavesOut) return row.evaluate(counting(args, at));
    const values = args.map((arg) => evaluate(arg, at));
    return values.every((value) => value !== null) ? (row?.evaluate(values) ?? null) : null;
  },
};

/** The values that are neither zero nor unknown. What is not known is missing only where too little is left without it. */
function counting(args: readonly Formula[], { lookUp, missing }: Evaluating): readonly Fraction[] {
  const unknown: string[] = [];
  const values = args.flatMap((arg) => {
    const value = evaluate(arg, { lookUp, missing: unknown });
    return value === null || value.n === 0n ? [] : [value];
  });
  if (values.length < 2) missing.push(...unknown);
  return values;
}

const operators: Readonly<Record<Node<'binary'>['operator'], (a: Fraction, b: Fraction) => Fraction | null>> =
  {
    '+': (a, b) => a.add(b),
    '-': (a, b) => a.sub(b),
    '*': (a, b) => a.mul(b),
    '/': (a, b) => (b.n === 0n ? null : a.div(b)),
  };

const comparisons: Readonly<Record<Node<'compare'>['operator'], (order: number) => boolean>> = {
  '<': (order) => order < 0,
  '>': (order) => order > 0,
  '<=': (order) => order <= 0,
  '>=': (order) => order >= 0,
};

function evaluate<Kind extends Formula['kind']>(node: Node<Kind>, at: Evaluating): Fraction | null {
  return evaluators[node.kind as Kind](node, at);
}
