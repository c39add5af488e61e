import type { Formula } from '../model/formula.ts';
import type { Parsed, TextProblem } from '../model/text-problem.ts';
import { nearest } from '../names/nearest.ts';
import { combine, common, type Dimension, dimensionOf, plainNumber } from './dimension.ts';
import { spanOfFormula } from './formula-spans.ts';
import { formulaText } from './formula-text.ts';
import type { Misfit } from './functions/function-row.ts';
import { functionNamed } from './functions/index.ts';

/** What kind of quantity a formula gives, or everything that keeps it from giving one.
 *  @param dimensions of the names it may use; null for a name that stands for no quantity */
export function checkFormula(
  formula: Formula,
  dimensions: ReadonlyMap<string, Dimension | null>,
): Parsed<Dimension> {
  const problems: TextProblem[] = [];
  const value = check(formula, { dimensions, problems });
  return value === null ? { ok: false, problems } : { ok: true, value };
}

interface Checking {
  readonly dimensions: ReadonlyMap<string, Dimension | null>;
  readonly problems: TextProblem[];
}

type Node<Kind> = Extract<Formula, { readonly kind: Kind }>;

const checks: { readonly [Kind in Formula['kind']]: (node: Node<Kind>, at: Checking) => Dimension | null } = {
  quantity: ({ unit }) => dimensionOf(unit),
  name: (node, { dimensions, problems }) => {
    const found = dimensions.get(node.name);
    const place = spanOfFormula(node);
    if (found === undefined) {
      problems.push({
        ...place,
        code: 'unknown-name',
        name: node.name,
        near: nearest(node.name, [...dimensions.keys()]),
      });
    } else if (found === null) {
      problems.push({ ...place, code: 'not-a-number', name: node.name });
    }
    return found ?? null;
  },
  negate: ({ of }, at) => check(of, at),
  binary: (node, at) => {
    const left = check(node.left, at);
    const right = check(node.right, at);
    if (left === null || right === null) return null;
    if (node.operator === '*') return combine(left, right, 1);
    if (node.operator === '/') return combine(left, right, -1);
    return common(left, right) ?? unlike([node.left, left], [node.right, right], at);
  },
  compare: (node, at) => {
    const left = check(node.left, at);
    const right = check(node.right, at);
    if (left === null || right === null) return null;
    return common(left, right) === null ? unlike([node.left, left], [node.right, right], at) : plainNumber;
  },
  call: (node, at) => {
    const args = node.arguments.map((arg) => check(arg, at));
    const row = functionNamed(node.name);
    if (row === undefined || !args.every((arg) => arg !== null)) return null;
    const given = row.dimension(args);
    return 'vector' in given ? given : misfit(node.arguments, args, given, at);
  },
};

function check<Kind extends Formula['kind']>(node: Node<Kind>, at: Checking): Dimension | null {
  return checks[node.kind as Kind](node, at);
}

type Operand = readonly [Formula, Dimension];

function misfit(args: readonly Formula[], found: readonly Dimension[], why: Misfit, at: Checking): null {
  const operand = (place: number): Operand => [args[place] as Formula, found[place] as Dimension];
  if ('unlike' in why) return unlike(operand(why.unlike[0]), operand(why.unlike[1]), at);
  const [arg, { text: unit }] = operand(why.notPlain);
  at.problems.push({ ...spanOfFormula(arg), code: 'wrong-unit', unit, expected: '' });
  return null;
}

function unlike([left, a]: Operand, [right, b]: Operand, { problems }: Checking): null {
  problems.push({
    ...spanOfFormula(left),
    code: 'unlike-units',
    left: a.text,
    right: b.text,
    leftText: formulaText(left),
    rightText: formulaText(right),
    related: spanOfFormula(right),
  });
  return null;
}
