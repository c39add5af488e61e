import type { Formula } from '../model/formula.ts';
import { printQuantity } from '../quantity/index.ts';

type Node<Kind> = Extract<Formula, { readonly kind: Kind }>;

/** How tight the parts of a formula are held together; a looser part stands in brackets. */
const powers: Readonly<Record<string, number>> = { '+': 1, '-': 1, '*': 2, '/': 2 };
const whole = 4;

const texts: { readonly [Kind in Formula['kind']]: (node: Node<Kind>) => string } = {
  quantity: (node) => printQuantity(node),
  name: ({ name }) => name,
  negate: ({ of }) => `-${held(of, of.kind === 'quantity' ? whole + 1 : whole)}`,
  binary: ({ operator, left, right }) =>
    `${held(left, powerOf(operator))} ${operator} ${held(right, powerOf(operator) + 1)}`,
  compare: ({ operator, left, right }) => `${formulaText(left)} ${operator} ${formulaText(right)}`,
  call: ({ name, arguments: args }) => `${name}(${args.map((arg) => formulaText(arg)).join(', ')})`,
};

const powerOf = (operator: string): number => powers[operator] ?? 0;

function held(part: Formula, power: number): string {
  const own = part.kind === 'binary' ? powerOf(part.operator) : whole;
  return own < power ? `(${formulaText(part)})` : formulaText(part);
}

/** A formula as it can be written: `(cpu_clk + 1 MHz) / bus`. */
export function formulaText<Kind extends Formula['kind']>(node: Node<Kind>): string {
  return texts[node.kind as Kind](node);
}
