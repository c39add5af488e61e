import type { CompiledTree } from '../../model/compiled-tree.ts';
import { type Arranging, arrangingOf } from '../../next/index.ts';
import { readIn } from '../../run/read-in.ts';
import type { TreeColumn } from '../matrix/columns-of.ts';
import type { TreeWalk } from '../tree-walks.ts';
import { total, type WalkStep } from '../walk-minutes.ts';
import { EndsSeen } from './ends-seen.ts';
import type { Evidence } from './evidence.ts';
import { isInProcedure } from './is-in-procedure.ts';

/** A reading that would better be taken earlier. */
export interface Earlier {
  readonly reading: string;
  /** The section before which it would be taken. */
  readonly section: string;
  /** Expected minutes of all boards that this saves. */
  readonly saves: number;
  /** Of the boards that come to the section, the share on which it decides where the walk ends. 0..1. */
  readonly decides: number;
}

/** Sections that fewer boards come to are not worth a word. */
const leastReach = 0.01;

/**
 * What it would save to take a reading before a section instead of where the tree takes it, one change at a time. Where what was seen
 * before and the reading's band leave one end only, the walk goes there at once; else it goes on as before, and the reading costs nothing
 * where it is asked again. A reading that needs the board in another condition pays for the change and for the way back.
 */
export function movesEarlier(
  tree: CompiledTree,
  columns: readonly TreeColumn[],
  walks: readonly TreeWalk[],
  weights: readonly number[],
  evidence: Evidence,
): readonly Earlier[] {
  const own = new Set(
    tree.sections.flatMap((section) =>
      section.kind === 'check' && !isInProcedure(section.id) ? section.readings : [],
    ),
  );
  const tries = columns.filter(({ id, reading }) => reading?.from === null && own.has(id));
  const { minutesTo } = arrangingOf(tree, {});
  const passing = visitsBySection(walks, weights, evidence);
  const best = new Map<string, Earlier>();
  for (const [section, visits] of passing) {
    if (isInProcedure(section)) continue;
    const reach = visits.reduce((sum, { weight }) => sum + weight, 0);
    if (reach < leastReach) continue;
    for (const column of tries) {
      if (
        readIn(tree)
          .get(column.id)
          ?.some(({ id }) => id === section)
      )
        continue;
      const found = tried(minutesTo, column, section, visits, reach, evidence);
      if (found !== null && found.saves > (best.get(column.id)?.saves ?? 1e-9)) best.set(column.id, found);
    }
  }
  return [...best.values()].toSorted((one, other) => other.saves - one.saves);
}

/** A walk that comes to a section for the first time. */
interface Visit {
  readonly walk: TreeWalk;
  readonly weight: number;
  readonly end: string;
  readonly before: ReadonlyMap<string, string>;
  readonly key: string;
  readonly done: ReadonlySet<string>;
  readonly conditions: WalkStep['conditions'];
  /** Minutes from here on. */
  readonly rest: number;
  /** Readings that are taken from here on. */
  readonly later: ReadonlySet<string>;
}

function visitsBySection(
  walks: readonly TreeWalk[],
  weights: readonly number[],
  evidence: Evidence,
): ReadonlyMap<string, readonly Visit[]> {
  const found = new Map<string, Visit[]>();
  walks.forEach((walk, place) => {
    const { steps, end } = walk;
    const before = new Map<string, string>();
    const done = new Set<string>();
    for (const [at, step] of steps.entries()) {
      if (!done.has(step.section)) {
        const visits = found.get(step.section) ?? [];
        found.set(step.section, visits);
        const ahead = steps.slice(at);
        visits.push({
          walk,
          weight: weights[place] ?? 0,
          end,
          before: new Map(before),
          key: evidence.keyOf(before),
          done: new Set(done),
          conditions: step.conditions,
          rest: ahead.reduce((sum, each) => sum + total(each), 0),
          later: new Set(ahead.flatMap(({ fresh }) => fresh)),
        });
      }
      done.add(step.section);
      for (const [reading, band] of Object.entries(step.bands)) before.set(reading, band);
    }
  });
  return found;
}

function tried(
  minutesTo: Arranging['minutesTo'],
  column: TreeColumn,
  section: string,
  visits: readonly Visit[],
  reach: number,
  evidence: Evidence,
): Earlier | null {
  if (visits.some((visit) => !isReady(column, visit))) return null;
  // Taken here anyway, or never on any of these walks: then moving it changes nothing, or is another tree.
  if (!visits.some(({ later }) => later.has(column.id))) return null;
  const ends = new EndsSeen();
  for (const { walk, key, end } of visits) {
    ends.note(key, end);
    for (const { key: band } of evidence.bandsOf(walk, column.id)) ends.note(`${key}\n\n${band}`, end);
  }
  let saves = 0;
  let decides = 0;
  for (const { walk, key, rest, later, conditions, weight } of visits) {
    const cost = column.minutes + column.wait + thereAndBack(minutesTo, column, conditions);
    const again = later.has(column.id) ? column.minutes + column.wait : 0;
    for (const { key: band, share } of evidence.bandsOf(walk, column.id)) {
      // What was decided before is not this reading's merit.
      const isDecided = !ends.areOne(key) && ends.areOne(`${key}\n\n${band}`);
      saves += weight * share * (isDecided ? rest - cost : again - cost);
      if (isDecided) decides += weight * share;
    }
  }
  return { reading: column.id, section, saves, decides: decides / reach };
}

const isReady = ({ id, after, only }: TreeColumn, { before, done }: Visit): boolean =>
  !before.has(id) &&
  after.every((earlier) => before.has(earlier) || done.has(earlier)) &&
  only.every(({ reading, bands }) => bands.includes(before.get(reading) ?? ''));

function thereAndBack(
  minutesTo: Arranging['minutesTo'],
  { when }: TreeColumn,
  conditions: WalkStep['conditions'],
): number {
  if (Object.entries(when).every(([id, value]) => conditions[id] === value)) return 0;
  const there = minutesTo(when, conditions);
  const back = minutesTo(Object.fromEntries(Object.keys(when).map((id) => [id, conditions[id] ?? ''])), {
    ...conditions,
    ...when,
  });
  return there === null || back === null ? Number.POSITIVE_INFINITY : there + back;
}
