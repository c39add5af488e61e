import type { Formula } from '../../model/formula.ts';
import { fromStored } from '../../quantity/index.ts';
import { added, divided, multiplied, negated, subtracted } from './arithmetic.ts';
import { type Bounds, exactly } from './bounds.ts';
import { compared } from './comparison.ts';
import { functionBounds } from './function-bounds.ts';

type Node<Kind> = Extract<Formula, { readonly kind: Kind }>;
type LookUp = (name: string) => Bounds;

const rules: { readonly [Kind in Formula['kind']]: (node: Node<Kind>, lookUp: LookUp) => Bounds } = {
  quantity: (node) => exactly(fromStored(node)),
  name: ({ name }, lookUp) => lookUp(name),
  negate: ({ of }, lookUp) => negated(boundsOf(of, lookUp)),
  binary: ({ operator, left, right }, lookUp) =>
    operators[operator](boundsOf(left, lookUp), boundsOf(right, lookUp)),
  compare: ({ operator, left, right }, lookUp) =>
    compared(operator, boundsOf(left, lookUp), boundsOf(right, lookUp)),
  call: ({ name, arguments: args }, lookUp) =>
    functionBounds(
      name,
      args.map((arg) => boundsOf(arg, lookUp)),
    ),
};

const operators: Readonly<Record<Node<'binary'>['operator'], (a: Bounds, b: Bounds) => Bounds>> = {
  '+': added,
  '-': subtracted,
  '*': multiplied,
  '/': divided,
};

/** All that a formula can come out as, in its base unit, where its names are known by their bounds; 1 or 0 for a comparison
 *  that holds or does not. Sound: no possible value is left out. Exact where every name has one value; else perhaps too
 *  wide where a name stands in the formula twice. */
export function boundsOf<Kind extends Formula['kind']>(node: Node<Kind>, lookUp: LookUp): Bounds {
  return rules[node.kind as Kind](node, lookUp);
}
