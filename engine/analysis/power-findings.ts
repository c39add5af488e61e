import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { dimensionOf, fits } from '../formula/index.ts';
import type { LinkedSection, LinkedTree } from '../link/linked-tree.ts';
import type { Reading } from '../model/reading.ts';
import { targetsOf } from '../paths/targets-of.ts';

/**
 * A board is powered on some walk before any resistance was measured with the power off. Told once, at the first such
 * section, and only in trees that measure resistances at all: others begin where that has been done.
 */
export function powerFindings({ facts, sections }: LinkedTree): readonly Diagnostic[] {
  const readings = new Map(facts.readings.map((reading) => [reading.id, reading]));
  const read = sections.flatMap(({ section }) => (section.kind === 'check' ? section.readings : []));
  if (!read.some((id) => isOhms(readings.get(id)))) return [];
  const unproven = new Set(
    facts.readings
      .filter((reading) => reading.power === 'on' && !asksForOhms(reading, readings))
      .map(({ id }) => id),
  );
  const before = sectionsBeforeOhms(sections, readings);
  for (const { section, leadSpan } of sections) {
    if (section.kind !== 'check' || !before.has(section.id)) continue;
    const ohms = section.readings.findIndex((id) => isOhms(readings.get(id)));
    const early = section.readings.slice(0, ohms < 0 ? undefined : ohms).find((id) => unproven.has(id));
    if (early !== undefined)
      return [{ code: 'power-before-ohms', reading: early, title: section.title, span: leadSpan }];
  }
  return [];
}

/** The sections that some walk enters before it has measured a resistance. */
function sectionsBeforeOhms(
  sections: readonly LinkedSection[],
  readings: ReadonlyMap<string, Reading>,
): ReadonlySet<string> {
  const byId = new Map(sections.map(({ section }) => [section.id, section]));
  const before = new Set(sections.slice(0, 1).map(({ section }) => section.id));
  for (const id of before) {
    const section = byId.get(id);
    const measures = section?.kind === 'check' && section.readings.some((each) => isOhms(readings.get(each)));
    if (section === undefined || measures) continue;
    for (const target of targetsOf(section)) before.add(target);
  }
  return before;
}

function isOhms(reading: Reading | undefined): boolean {
  if (reading?.power !== 'off') return false;
  const { measure } = reading;
  const one = measure.kind === 'each' ? measure.of : measure;
  return one.kind === 'quantity' && fits(dimensionOf(one.unit), dimensionOf('Ω'));
}

/** Whether the reading may only be taken once some resistance was seen. */
const asksForOhms = ({ onlyIf }: Reading, readings: ReadonlyMap<string, Reading>): boolean =>
  onlyIf.some(({ reading }) => isOhms(readings.get(reading)));
