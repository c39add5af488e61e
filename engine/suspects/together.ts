import type { Drawn } from './draws.ts';
import type { Piece } from './pieces.ts';
import { answerersIn, likelihoodIn, type Scene, scenesOf, tableFor } from './scenes.ts';
import type { Weighing } from './weighing.ts';

/** One way in which things can have come out for everybody who answers, and its share of all ways beside what was seen. */
export interface Course {
  readonly drawn: ReadonlyMap<number, Drawn>;
  readonly share: number;
}

/** What is known after some readings that come out together. */
export interface Courses {
  /** The natural logarithm of how likely what was seen is. */
  readonly log: number;
  /** Their shares add up to 1. */
  readonly courses: readonly Course[];
}

export const noCourse: Courses = { log: 0, courses: [{ drawn: new Map(), share: 1 }] };

/** More courses than this are not followed: the least likely are left out. Far beyond what trees need. */
const mostCourses = 8192;

const nothing: Drawn = new Map();

/**
 * Takes one reading into account. What it hangs on is drawn beside what has been drawn before; of that, only what other readings hang
 * on is kept, so that a hundred readings behind one rail are as many steps and not as many combinations.
 *
 *      v5 dead 0.7 ─┐ post_code none ─▶ v5 dead 0.97      (post_code itself is forgotten)
 *      v5 low  0.3 ─┘                   v5 low  0.03
 */
export function courseOn(weighing: Weighing, own: readonly number[], before: Courses, piece: Piece): Courses {
  const scenes = scenesAmong(weighing, own, piece);
  const found = new Map<string, Course>();
  let total = 0;
  for (const { drawn, share, likelihood } of branches(weighing, piece, scenes, before)) {
    const weight = share * likelihood;
    if (weight === 0) continue;
    total += weight;
    const kept = keptOf(weighing, drawn);
    const key = keyOf(kept);
    found.set(key, { drawn: kept, share: weight + (found.get(key)?.share ?? 0) });
  }
  const likeliest = [...found.values()].sort((a, b) => b.share - a.share).slice(0, mostCourses);
  const sum = likeliest.reduce((shares, { share }) => shares + share, 0);
  return {
    log: before.log + Math.log(total),
    courses:
      sum === 0 ? before.courses : likeliest.map((course) => ({ ...course, share: course.share / sum })),
  };
}

export const scenesAmong = (weighing: Weighing, own: readonly number[], piece: Piece): readonly Scene[] =>
  scenesOf(
    weighing,
    piece,
    own.map((answerer) => ({ answerer, sometimes: weighing.isSometimes(answerer) })),
  );

/** A course with what everybody does in one reading. */
export interface Branch extends Course {
  readonly places: ReadonlyMap<number, number>;
  readonly likelihood: number;
}

/** @param more answerers that are wanted besides those who were looked at */
export function* branches(
  weighing: Weighing,
  piece: Piece,
  scenes: readonly Scene[],
  { courses }: Courses,
  more: readonly number[] = [],
): Generator<Branch> {
  const answerers = [...new Set([...answerersIn(scenes), ...more])];
  for (const course of courses) yield* from(0, course, new Map());

  function* from(index: number, course: Course, places: ReadonlyMap<number, number>): Generator<Branch> {
    const answerer = answerers[index];
    if (answerer === undefined) {
      const likelihood = likelihoodIn(piece, scenes, (one) => places.get(one) ?? 0);
      yield { ...course, places, likelihood };
      return;
    }
    const before = course.drawn.get(answerer) ?? nothing;
    for (const { drawn, share, place } of waysOf(weighing, piece, answerer, before)) {
      const next = drawn === before ? course.drawn : new Map([...course.drawn, [answerer, drawn] as const]);
      yield* from(
        index + 1,
        { drawn: next, share: course.share * share },
        new Map([...places, [answerer, place] as const]),
      );
    }
  }
}

function waysOf(
  weighing: Weighing,
  piece: Piece,
  answerer: number,
  drawn: Drawn,
): readonly { readonly drawn: Drawn; readonly share: number; readonly place: number }[] {
  const answers = weighing.answers(answerer);
  if (piece.table === null && !answers.isAlone(piece.reading)) return answers.draw(piece.reading, drawn);
  return [...tableFor(weighing, piece, answerer)].flatMap((share, place) =>
    share > 0 ? [{ drawn, share, place }] : [],
  );
}

function keptOf(weighing: Weighing, drawn: ReadonlyMap<number, Drawn>): ReadonlyMap<number, Drawn> {
  return new Map(
    [...drawn].map(([answerer, own]) => {
      const answers = weighing.answers(answerer);
      return [answerer, new Map([...own].filter(([root]) => answers.isShared(root)))] as const;
    }),
  );
}

const keyOf = (drawn: ReadonlyMap<number, Drawn>): string =>
  JSON.stringify([...drawn].map(([answerer, own]) => [answerer, [...own].sort()]).sort());

/** Readings that come out together under a hypothesis, group by group. Readings that nothing links stand alone. */
export function groupsOf(
  weighing: Weighing,
  own: readonly number[],
  pieces: readonly Piece[],
): readonly (readonly Piece[])[] {
  const groups: { pieces: Piece[]; links: Set<string> }[] = [];
  for (const piece of pieces) {
    const links = linksOf(weighing, own, piece);
    const touched = groups.filter((group) => [...links].some((link) => group.links.has(link)));
    const [first, ...others] = touched;
    if (first === undefined) {
      groups.push({ pieces: [piece], links: new Set(links) });
      continue;
    }
    first.pieces.push(piece);
    for (const link of links) first.links.add(link);
    for (const other of others) {
      first.pieces.push(...other.pieces);
      for (const link of other.links) first.links.add(link);
      groups.splice(groups.indexOf(other), 1);
    }
  }
  return groups.map((group) => group.pieces);
}

/** What a piece hangs on, by who answers. */
export function linksOf(weighing: Weighing, own: readonly number[], piece: Piece): ReadonlySet<string> {
  const links = new Set<string>();
  if (piece.table !== null) return links;
  for (const answerer of new Set([...own, ...answerersIn(scenesAmong(weighing, own, piece))])) {
    for (const root of weighing.answers(answerer).roots(piece.reading)) links.add(`${answerer} ${root}`);
  }
  return links;
}
