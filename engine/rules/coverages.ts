import type { Box } from '../combinations/box.ts';
import { type FirstMatches, firstMatches } from '../combinations/first-matches.ts';
import type { LinkedSection, LinkedTree } from '../link/linked-tree.ts';
import type { CheckSection } from '../model/section.ts';
import type { TreeFacts } from '../model/tree-facts.ts';
import { bandsOf } from '../scale/index.ts';

/** Beyond this many boxes a check is refused: nobody could follow it either. */
const mostBoxes = 2000;

/** A tree with this many refused checks was not written by hand: the others get little time. */
const mostRefused = 20;
const hastyBoxes = 50;

/** What the outcomes of a check take, and what they leave. */
export interface Coverage extends FirstMatches {
  readonly check: CheckSection;
  readonly linked: LinkedSection;
  /** For each line of `taken`, its place among the outcomes; `cannot read` is no line. */
  readonly lines: readonly number[];
  /** Every band of every name that matters. */
  readonly all: Box;
}

const known = new WeakMap<LinkedTree, readonly Coverage[]>();

/** The coverage of every check in which all names could be resolved. Several rules ask for it. */
export function coverages(tree: LinkedTree): readonly Coverage[] {
  const found = known.get(tree) ?? coveragesOf(tree);
  known.set(tree, found);
  return found;
}

function coveragesOf({ facts, sections }: LinkedTree): readonly Coverage[] {
  const bands = bandsIn(facts);
  let refused = 0;
  return sections.flatMap((linked) => {
    const check = linked.section;
    if (check.kind !== 'check' || !linked.sound) return [];
    const coverage = coverageOf(check, linked, bands, refused < mostRefused ? mostBoxes : hastyBoxes);
    if (!coverage.exact) refused += 1;
    return [coverage];
  });
}

type Bands = ReadonlyMap<string, readonly string[]>;

const declared = new WeakMap<TreeFacts, Bands>();

function bandsIn(facts: TreeFacts): Bands {
  const found = declared.get(facts) ?? bandsAmong(facts);
  declared.set(facts, found);
  return found;
}

const bandsAmong = ({ settings, readings }: TreeFacts): Bands =>
  new Map([
    ...settings.flatMap((setting) =>
      setting.kind === 'options' ? [[setting.id, setting.options.map(({ name }) => name)] as const] : [],
    ),
    ...readings.map((reading) => [reading.id, bandsOf(reading)] as const),
  ]);

function coverageOf(check: CheckSection, linked: LinkedSection, bands: Bands, most: number): Coverage {
  const before = most === mostBoxes ? worked.get(check) : undefined;
  if (before && (before.bands === bands || stillHolds(before.coverage.all, bands)))
    return before.coverage.linked === linked ? before.coverage : { ...before.coverage, linked };
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
  const coverage = { ...firstMatches(all, boxes, most), check, linked, lines, all };
  if (most === mostBoxes) worked.set(check, { coverage, bands });
  return coverage;
}

/** What was worked out for checks before: a check that has not changed since need not be looked through again. */
const worked = new WeakMap<CheckSection, { readonly coverage: Coverage; readonly bands: Bands }>();

const stillHolds = (all: Box, bands: Bands): boolean =>
  Object.keys(all).every((name) => {
    const now = bands.get(name) ?? [];
    const then = all[name] ?? [];
    return now === then || (now.length === then.length && now.every((band, index) => band === then[index]));
  });
