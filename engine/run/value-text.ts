import { checkFormula, dimensionOf, evaluateFormula } from '../formula/index.ts';
import type { Formula } from '../model/formula.ts';
import { exactOf, fromStored, printQuantity } from '../quantity/index.ts';
import { settingText } from '../scale/index.ts';
import type { Session } from './session.ts';

/** What a value in the prose is now: `66 MHz`, the name of an option, or `not known`. */
export function valueText(session: Session, formula: Formula): string {
  if (formula.kind === 'name') return noted(session, formula.name);
  const value = evaluateFormula(formula, (name) => {
    const known = session.settings.get(name);
    return known === undefined || known === null || typeof known === 'string' ? null : fromStored(known);
  });
  if (value.kind !== 'value') return 'not known';
  return printQuantity({ value: exactOf(value.value), unit: unitOf(session, formula) });
}

function noted(session: Session, id: string): string {
  const value = session.settings.get(id) ?? null;
  return value === null ? 'not known' : settingText(value);
}

/** The unit in which the author thinks: MHz for `bus * 2`, s for `1 / bus`. */
function unitOf(session: Session, formula: Formula): string {
  const dimensions = new Map(
    [...session.loaded.settings].map(([id, setting]) => [
      id,
      setting.kind === 'quantity' ? dimensionOf(setting.unit) : null,
    ]),
  );
  const found = checkFormula(formula, dimensions);
  return found.ok ? found.value.text : '';
}
