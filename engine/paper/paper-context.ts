import { checkFormula, dimensionOf, evaluateFormula } from '../formula/index.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Formula } from '../model/formula.ts';
import type { Present } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { Section } from '../model/section.ts';
import { sectionNumbers } from '../outline/section-numbers.ts';
import { exactOf, fromStored, printQuantity } from '../quantity/index.ts';
import { settingText } from '../scale/index.ts';

/** What every part of the sheet looks things up in. */
export interface PaperContext {
  readonly tree: CompiledTree;
  readonly sections: ReadonlyMap<string, Section>;
  readonly readings: ReadonlyMap<string, Reading>;
  /** Printed section numbers, by id. */
  readonly numbers: ReadonlyMap<string, string>;
  /** The settings as they usually are: paper cannot know those of the board. */
  readonly usual: Present;
  /** The value of a formula at the usual settings; null where one of them has no usual value. */
  readonly usualOf: (formula: Formula) => string | null;
}

export function paperContext(tree: CompiledTree): PaperContext {
  const settings = new Map(tree.settings.map(({ id, usual }) => [id, usual]));
  const dimensions = new Map(
    tree.settings.map((setting) => [
      setting.id,
      setting.kind === 'quantity' ? dimensionOf(setting.unit) : null,
    ]),
  );
  const usualOf = (formula: Formula): string | null => {
    if (formula.kind === 'name') {
      const value = settings.get(formula.name) ?? null;
      return value === null ? null : settingText(value);
    }
    const value = evaluateFormula(formula, (name) => {
      const known = settings.get(name) ?? null;
      return known === null || typeof known === 'string' ? null : fromStored(known);
    });
    if (value.kind !== 'value') return null;
    const checked = checkFormula(formula, dimensions);
    return printQuantity({ value: exactOf(value.value), unit: checked.ok ? checked.value.text : '' });
  };
  return {
    tree,
    sections: new Map(tree.sections.map((section) => [section.id, section])),
    readings: new Map(tree.readings.map((reading) => [reading.id, reading])),
    numbers: sectionNumbers(tree.sections),
    usual: { settings, twins: new Map() },
    usualOf,
  };
}
