import type { Section } from '../model/section.ts';
import { type MapWay, waysOfSection } from './ways-of-section.ts';

/** Sections that are drawn in one piece, the first one on top. */
export interface Division {
  readonly sections: readonly Section[];
  /** Whether the way between two sections is drawn as a line; else it goes by connectors. */
  readonly drawn: (from: string, to: string) => boolean;
}

/** How many sections a piece may be deep: about a page. */
const deepest = 9;
/** A line may pass so many levels of a piece. */
const farthest = 2;

/**
 * Cuts sections of one file into pieces.
 *
 * Each section hangs below the nearest section before it that leads to it, which makes a tree of them; that is cut
 * where it gets too deep. Other ways are drawn where they are short, lead down and stay in their piece.
 *
 *     a            piece 1: a b c d         piece 2: e f g
 *     ├ b
 *     └ c ┬ d      d ─ (e)                  (e) ─ e ┬ f
 *         └ e …                                     └ g
 */
export function divide(sections: readonly Section[]): readonly Division[] {
  const index = new Map(sections.map(({ id }, at) => [id, at]));
  const at = (id: string): number => index.get(id) ?? -1;
  const ways = new Map(sections.map((section) => [section.id, inFile(waysOfSection(section), index)]));
  const above = parents(sections, ways, at);
  const below = new Map(
    sections.map(({ id }) => [id, sections.filter((other) => above.get(other.id) === id)]),
  );
  const depth = depths(sections, above);
  const pieces = Math.max(1, Math.ceil((1 + Math.max(...depth.values())) / deepest));
  const height = Math.ceil((1 + Math.max(...depth.values())) / pieces);
  const root = new Map<string, string>();
  const level = new Map<string, number>();
  for (const { id } of sections.toSorted((a, b) => (depth.get(a.id) ?? 0) - (depth.get(b.id) ?? 0))) {
    const parent = above.get(id);
    const deeper = parent === undefined ? 0 : (level.get(parent) ?? 0) + 1;
    const cut = deeper >= height && (below.get(id)?.length ?? 0) > 0;
    root.set(id, parent === undefined || cut ? id : (root.get(parent) ?? id));
    level.set(id, parent === undefined || cut ? 0 : deeper);
  }
  const drawn = (from: string, to: string): boolean => {
    const down = (level.get(to) ?? 0) - (level.get(from) ?? 0);
    const near = at(from) < at(to) && down > 0 && down <= farthest;
    return root.get(from) === root.get(to) && (above.get(to) === from || near);
  };
  return sections
    .filter(({ id }) => root.get(id) === id)
    .map((top) => ({ sections: sections.filter(({ id }) => root.get(id) === top.id), drawn }));
}

const inFile = (ways: readonly MapWay[], index: ReadonlyMap<string, number>): readonly string[] =>
  ways.map(({ target }) => target).filter((target) => index.has(target));

/** For each section the one it hangs below: the last one before it that leads there. */
function parents(
  sections: readonly Section[],
  ways: ReadonlyMap<string, readonly string[]>,
  at: (id: string) => number,
): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const { id } of sections)
    for (const target of ways.get(id) ?? []) if (at(id) < at(target)) found.set(target, id);
  return found;
}

function depths(
  sections: readonly Section[],
  above: ReadonlyMap<string, string>,
): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const { id } of sections) {
    const parent = above.get(id);
    found.set(id, parent === undefined ? 0 : (found.get(parent) ?? 0) + 1);
  }
  return found;
}
