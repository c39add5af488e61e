import { type Piece, piecesOf } from './pieces.ts';
import { plainPrediction, plainPredictionOfTwo, slipped } from './plain-prediction.ts';
import { type Restricted, restricted } from './restricted.ts';
import type { Scene } from './scenes.ts';
import { bandsShown } from './shape.ts';
import type { Sighting } from './sighting.ts';
import { branches, type Courses, courseOn, groupsOf, linksOf, noCourse, scenesAmong } from './together.ts';
import type { Weighing } from './weighing.ts';
import { sumOf } from './weights-seen.ts';

/** What was seen, ready for predictions. */
export interface SeenSoFar {
  readonly weighing: Weighing;
  readonly sightings: readonly Sighting[];
  readonly pieces: readonly Piece[];
  /** Those of readings that are taken, by reading. */
  readonly taken: ReadonlyMap<number, Piece>;
  /** What was seen of readings that come out together, by who answers; made when they are first asked for. */
  readonly linked: Map<string, readonly LinkedGroup[]>;
}

export function seenSoFar(weighing: Weighing, sightings: readonly Sighting[]): SeenSoFar {
  const pieces = piecesOf(weighing, sightings);
  const taken = new Map(pieces.flatMap((piece) => (piece.table === null ? [[piece.reading, piece]] : [])));
  return { weighing, sightings, pieces, taken, linked: new Map() };
}

/** Readings that come out together, and what is known of that. */
interface LinkedGroup {
  readonly pieces: readonly Piece[];
  readonly links: ReadonlySet<string>;
  readonly courses: Courses;
}

/** How likely each band is to be read next on the board as it is now, slips counted in.
 *  @param own who answers under the hypothesis */
export function predictionOf(seen: SeenSoFar, own: readonly number[], reading: number): readonly number[] {
  const { weighing, sightings } = seen;
  const within = restricted(weighing, reading, { alsoPresent: [] }, sightings);
  if (within !== null) return restrictedPrediction(seen, own, reading, within);
  const piece = seen.taken.get(reading);
  if (piece === undefined && own.every((answerer) => weighing.answers(answerer).isAlone(reading))) {
    const [first, second] = own;
    if (first !== undefined && second === undefined) return plainPrediction(weighing, first, reading);
    if (first !== undefined && second !== undefined) {
      return plainPredictionOfTwo(weighing, [first, second], reading);
    }
  }
  const shape = weighing.shape(reading);
  const asked = piece ?? { reading, shape, looks: [], table: null };
  const shown = bandsNext(weighing, own, asked, coursesBeside(seen, own, asked));
  return slipped(shown, weighing.odds.slip);
}

/** A band of a computed reading slips among those that its inputs allow. */
function restrictedPrediction(
  { weighing, pieces }: SeenSoFar,
  own: readonly number[],
  reading: number,
  { shape, table }: Restricted,
): readonly number[] {
  const piece = pieces.findLast((one) => one.reading === reading && one.table !== null && isNow(one));
  const shown = bandsNext(weighing, own, piece ?? { reading, shape, looks: [], table }, noCourse);
  const { slip } = weighing.odds;
  return Array.from(shown, (share, band) => (1 - slip) * share + slip * (shape.whileSilent[band] ?? 0));
}

const isNow = ({ looks }: Piece): boolean => looks.every(({ also }) => also.length === 0);

/** What is known of everything that comes out together with a reading, without what was seen of itself. */
function coursesBeside(seen: SeenSoFar, own: readonly number[], piece: Piece): Courses {
  const { weighing } = seen;
  const links = linksOf(weighing, own, piece);
  if (links.size === 0) return noCourse;
  const near = groupsSeen(seen, own).filter((group) => [...links].some((link) => group.links.has(link)));
  const [only] = near;
  if (only === undefined) return noCourse;
  if (near.length === 1 && !only.pieces.includes(piece)) return only.courses;
  return near
    .flatMap(({ pieces }) => pieces)
    .filter((one) => one !== piece)
    .reduce((courses, one) => courseOn(weighing, own, courses, one), noCourse);
}

function groupsSeen({ weighing, taken, linked }: SeenSoFar, own: readonly number[]): readonly LinkedGroup[] {
  const key = own.join();
  const before = linked.get(key);
  if (before !== undefined) return before;
  const made = groupsOf(weighing, own, [...taken.values()]).map((group) => ({
    pieces: group,
    links: new Set(group.flatMap((piece) => [...linksOf(weighing, own, piece)])),
    courses: group.reduce((courses, piece) => courseOn(weighing, own, courses, piece), noCourse),
  }));
  linked.set(key, made);
  return made;
}

/** How the bands share what the board shows now. Where it was looked at with the same on it, it shows the same again. */
function bandsNext(weighing: Weighing, own: readonly number[], piece: Piece, courses: Courses): Float64Array {
  const scenes = scenesAmong(weighing, own, piece);
  const now = scenes.find((scene) => isAmong(scene, own));
  const others = scenes.filter((scene) => scene !== now);
  const next = new Float64Array(piece.shape.bands.length);
  for (const { share, likelihood, places } of branches(weighing, piece, others, courses, own)) {
    const shown = bandsShown(
      piece.shape,
      own.map((answerer) => places.get(answerer) ?? 0),
    );
    for (let band = 0; band < next.length; band++) {
      const fits = now === undefined ? 1 : (now.fits[band] ?? 0);
      next[band] = (next[band] ?? 0) + share * likelihood * (shown[band] ?? 0) * fits;
    }
  }
  const sum = sumOf(next);
  return sum > 0 ? next.map((one) => one / sum) : piece.shape.whileSilent;
}

const isAmong = ({ answerers }: Scene, own: readonly number[]): boolean =>
  answerers.length === own.length && answerers.every((answerer) => own.includes(answerer));
