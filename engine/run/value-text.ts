import { evaluateFormula, namesIn } from '../formula/index.ts';
import type { Formula } from '../model/formula.ts';
import { exactOf, fromStored, printQuantity } from '../quantity/index.ts';
import type { Session } from './session.ts';

/** What a value in the prose is now: `66 MHz`, the name of an option, or `not known`. */
export function valueText(session: Session, formula: Formula): string {
  if (formula.kind === 'name') return settingText(session, formula.name);
  const value = evaluateFormula(formula, (name) => {
    const known = session.settings.get(name);
    return known === undefined || known === null || typeof known === 'string' ? null : fromStored(known);
  });
  if (value.kind !== 'value') return 'not known';
  return printQuantity({ value: exactOf(value.value), unit: unitOf(session, formula) });
}

function settingText(session: Session, id: string): string {
  const value = session.settings.get(id) ?? null;
  if (value === null) return 'not known';
  return typeof value === 'string' ? value : printQuantity(value);
}

/** The unit in which the author thinks: that of the first setting or quantity that has one. */
function unitOf(session: Session, formula: Formula): string {
  for (const name of namesIn(formula)) {
    const setting = session.loaded.settings.get(name);
    if (setting?.kind === 'quantity') return setting.unit;
  }
  return firstUnit(formula) ?? '';
}

function firstUnit(formula: Formula): string | null {
  switch (formula.kind) {
    case 'quantity':
      return formula.unit === '' ? null : formula.unit;
    case 'name':
      return null;
    case 'negate':
      return firstUnit(formula.of);
    case 'binary':
      return firstUnit(formula.left) ?? firstUnit(formula.right);
    case 'call':
      return formula.arguments.map(firstUnit).find((unit) => unit !== null) ?? null;
  }
}
