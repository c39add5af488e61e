import { dimensionOf, fits } from '../formula/index.ts';
import type { Reading } from '../model/reading.ts';
import type { Before } from '../next/index.ts';
import { mustPass } from './must-pass.ts';
import type { Session } from './session.ts';

/** Every resistance that must have been seen before the power is on for a reading: what the tree demands (`after`, `only if`) of it, of what it
 *  rests on, or of what every way to its section passes. */
export function ohmsBefore({ loaded }: Session, reading: Reading, section: string): readonly Before[] {
  if (reading.power !== 'on') return [];
  const found: Before[] = [];
  const seen = new Set<string>();
  const visit = (id: string, bands: readonly string[] | null): void => {
    const one = loaded.readings.get(id);
    if (one === undefined) return;
    if (isOhms(one)) found.push({ reading: id, bands });
    if (seen.has(id)) return;
    seen.add(id);
    visitAll(one);
    for (const need of one.needs) visit(need.reading, null);
  };
  const visitAll = ({ onlyIf, after }: Pick<Reading, 'onlyIf' | 'after'>): void => {
    for (const need of onlyIf) visit(need.reading, need.bands);
    for (const id of after) visit(id, null);
  };
  visitAll(reading);
  for (const need of reading.needs) visit(need.reading, null);
  for (const passed of mustPass(loaded.tree).get(section) ?? []) {
    const before = loaded.sections.get(passed);
    if (before?.kind === 'task') visitAll({ onlyIf: before.onlyIf, after: [] });
    const taken = before?.kind === 'check' ? before.readings : [];
    for (const id of taken) visitAll(loaded.readings.get(id) ?? { onlyIf: [], after: [] });
  }
  return found;
}

function isOhms({ power, measure }: Reading): boolean {
  const one = measure.kind === 'each' ? measure.of : measure;
  return power === 'off' && one.kind === 'quantity' && fits(dimensionOf(one.unit), dimensionOf('Ω'));
}
