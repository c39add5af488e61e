import type { Box } from '../combinations/box.ts';
import { type FirstMatches, firstMatches } from '../combinations/first-matches.ts';
import type { LinkedSection, LinkedTree } from '../link/linked-tree.ts';
import type { CheckSection } from '../model/section.ts';
import { bandsOf } from '../scale/index.ts';

/** Beyond this many boxes a check is refused: nobody could follow it either. */
export const mostBoxes = 5000;

/** What the outcomes of a check take, and what they leave. */
export interface Coverage extends FirstMatches {
  readonly check: CheckSection;
  readonly linked: LinkedSection;
  /** For each line of `taken`, its place among the outcomes; `cannot read` is no line. */
  readonly lines: readonly number[];
  /** Every band of every name that matters. */
  readonly all: Box;
}

/** The coverage of every check in which all names could be resolved. */
export function coverages({ facts, sections }: LinkedTree): Coverage[] {
  const bands = new Map<string, readonly string[]>([
    ...facts.settings.flatMap((setting) =>
      setting.kind === 'options' ? [[setting.id, setting.options.map(({ name }) => name)] as const] : [],
    ),
    ...facts.readings.map((reading) => [reading.id, bandsOf(reading)] as const),
  ]);
  return sections.flatMap((linked) => {
    const check = linked.section;
    return check.kind === 'check' && linked.sound ? [coverageOf(check, linked, bands)] : [];
  });
}

function coverageOf(
  check: CheckSection,
  linked: LinkedSection,
  bands: ReadonlyMap<string, readonly string[]>,
): Coverage {
  const named = check.outcomes.flatMap(({ condition }) =>
    condition.kind === 'bands' ? Object.keys(condition.bands) : [],
  );
  const names = [...new Set([...check.readings, ...named])];
  const all: Box = Object.fromEntries(names.map((name) => [name, bands.get(name) ?? []]));
  const lines = check.outcomes.flatMap(({ condition }, index) =>
    condition.kind === 'unread' ? [] : [index],
  );
  const boxes = lines.map((line) => {
    const condition = check.outcomes[line]?.condition;
    return condition?.kind === 'bands' ? condition.bands : null;
  });
  return { ...firstMatches(all, boxes, mostBoxes), check, linked, lines, all };
}
