import type { Piece } from './pieces.ts';
import { restricted } from './restricted.ts';
import type { Scene } from './scenes.ts';
import { bandsShown } from './shape.ts';
import type { Sighting } from './sighting.ts';
import { branches, type Courses, courseOn, groupsOf, linksOf, noCourse, scenesAmong } from './together.ts';
import type { Weighing } from './weighing.ts';
import { sumOf } from './weights-seen.ts';

/** What a prediction rests on. */
interface Ground {
  readonly weighing: Weighing;
  readonly sightings: readonly Sighting[];
  readonly pieces: readonly Piece[];
}

/** How likely each band is to be read next on the board as it is now, slips counted in.
 *  @param own who answers under the hypothesis */
export function predictionOf(ground: Ground, own: readonly number[], reading: number): Float64Array {
  const { weighing, sightings, pieces } = ground;
  const shape = weighing.ground.shapes[reading];
  if (shape === undefined) throw new Error('expected every reading to have a shape');
  const within = restricted(weighing, reading, { alsoPresent: [] }, sightings);
  const isOf = (piece: Piece): boolean =>
    piece.reading === reading && (piece.table !== null) === (within !== null);
  const seen = within === null ? pieces.find(isOf) : pieces.findLast((one) => isOf(one) && isNow(one));
  const piece: Piece = seen ?? {
    reading,
    shape: within?.shape ?? shape,
    looks: [],
    table: within?.table ?? null,
  };
  const others = pieces.filter((one) => one.table === null && one !== seen);
  const shown = bandsNext(weighing, own, piece, coursesBeside(weighing, own, piece, others));
  const { slip } = weighing.odds;
  const even = within === null ? shape.whileSilent : within.shape.whileSilent;
  // A band of a computed reading is spread over what its inputs allow, and over all bands where it stands alone.
  const spread = within === null ? shape.bands.map(() => 1 / shape.bands.length) : even;
  return shown.map((share, band) => (1 - slip) * share + slip * (spread[band] ?? 0));
}

const isNow = ({ looks }: Piece): boolean => looks.every(({ also }) => also.length === 0);

/** What is known of everything that comes out together with a reading, without what was seen of itself. */
function coursesBeside(
  weighing: Weighing,
  own: readonly number[],
  piece: Piece,
  others: readonly Piece[],
): Courses {
  const links = linksOf(weighing, own, piece);
  if (links.size === 0 || others.length === 0) return noCourse;
  const group = groupsOf(weighing, own, [piece, ...others]).find((pieces) => pieces.includes(piece)) ?? [];
  return group
    .filter((one) => one !== piece)
    .reduce((courses, one) => courseOn(weighing, own, courses, one), noCourse);
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
