import type { Formula } from '../model/formula.ts';

/** The names a formula rests on, each once, in order of first mention. */
export function namesIn(formula: Formula): readonly string[] {
  const names = new Set<string>();
  const visit = (node: Formula): void => {
    if (node.kind === 'name') names.add(node.name);
    for (const part of partsOf(node)) visit(part);
  };
  visit(formula);
  return [...names];
}

/** What a formula is made of, one level down. */
function partsOf(formula: Formula): readonly Formula[] {
  if (formula.kind === 'binary' || formula.kind === 'compare') return [formula.left, formula.right];
  if (formula.kind === 'negate') return [formula.of];
  return formula.kind === 'call' ? formula.arguments : [];
}
