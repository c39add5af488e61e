import type { Formula } from '../model/formula.ts';
import type { Parsed, TextProblem } from '../model/text-problem.ts';
import { nearest } from '../names/nearest.ts';
import { combine, common, type Dimension, dimensionOf, plainNumber } from './dimension.ts';
import { spanOfFormula } from './formula-spans.ts';
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
    return common(left, right) ?? unlike(node, left, right, at);
  },
  compare: (node, at) => {
    const left = check(node.left, at);
    const right = check(node.right, at);
    if (left === null || right === null) return null;
    return common(left, right) === null ? unlike(node, left, right, at) : plainNumber;
  },
  call: (node, at) => {
    const args = node.arguments.map((arg) => check(arg, at));
    const row = functionNamed(node.name);
    if (row === undefined || !args.every((arg) => arg !== null)) return null;
    const given = row.dimension(args);
    return 'unlike' in given ? unlike(node, given.unlike[0], given.unlike[1], at) : given;
  },
};

function check<Kind extends Formula['kind']>(node: Node<Kind>, at: Checking): Dimension | null {
  return checks[node.kind as Kind](node, at);
}

function unlike(node: Formula, left: Dimension, right: Dimension, { problems }: Checking): null {
  problems.push({ ...spanOfFormula(node), code: 'unlike-units', left: left.text, right: right.text });
  return null;
}
