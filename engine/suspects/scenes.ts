import type { Look, Piece } from './pieces.ts';
import { bandsShown, placesOf } from './shape.ts';
import { healthyAnswerer, type Weighing } from './weighing.ts';

/** Whoever is weighed: an answerer, or one to come by its name (−1, −2), of which only this is known. */
export interface Weighed {
  readonly answerer: number;
  readonly sometimes: boolean;
}

/** Looks at a board with the same on it. */
export interface Scene {
  /** Each once; never empty. */
  readonly answerers: readonly number[];
  readonly fits: Float64Array;
}

/** The looks at one reading, by who answered: faults that come sometimes are silent while the board runs, and what nobody answers
 *  reads as on a healthy board. */
export function scenesOf(weighing: Weighing, { looks }: Piece, own: readonly Weighed[]): readonly Scene[] {
  if (looks.length === 1 && looks[0] !== undefined) {
    return [{ answerers: answering(weighing, looks[0], own), fits: looks[0].fits }];
  }
  const scenes = new Map<string, Scene>();
  for (const look of looks) {
    const answerers = answering(weighing, look, own);
    const key = answerers.toSorted((a, b) => a - b).join();
    const before = scenes.get(key);
    const fits = before?.fits.map((value, at) => value * (look.fits[at] ?? 0)) ?? look.fits;
    scenes.set(key, { answerers, fits });
  }
  return [...scenes.values()];
}

function answering(weighing: Weighing, { also, running }: Look, own: readonly Weighed[]): readonly number[] {
  const all = own.filter(({ sometimes }) => !(running && sometimes)).map(({ answerer }) => answerer);
  for (const answerer of also) {
    if (!(running && weighing.isSometimes(answerer)) && !all.includes(answerer)) all.push(answerer);
  }
  return all.length > 0 ? all : [healthyAnswerer(weighing.tree)];
}

/** How likely all that was seen in the scenes is where each answerer does what `placeIn` says. */
export function likelihoodIn(
  { shape }: Piece,
  scenes: readonly Scene[],
  placeIn: (answerer: number) => number,
): number {
  let likelihood = 1;
  for (const { answerers, fits } of scenes) {
    const shown = bandsShown(shape, answerers.map(placeIn));
    let sum = 0;
    for (let band = 0; band < fits.length; band++) sum += (shown[band] ?? 0) * (fits[band] ?? 0);
    likelihood *= sum;
  }
  return likelihood;
}

export const tableFor = (weighing: Weighing, { table, reading }: Piece, answerer: number): Float64Array =>
  table?.(answerer) ?? weighing.answers(answerer).table(reading);

export const answerersIn = (scenes: readonly Scene[]): readonly number[] => [
  ...new Set(scenes.flatMap(({ answerers }) => answerers)),
];

/**
 * How likely all that was seen of a reading is, for whatever those that are weighed can do in it; the others are averaged over.
 *
 *      one    [place]                two    [place of the first · places + place of the second]
 *
 * The places of those weighed are independent of each other and of the others.
 */
export function evidenceOf(weighing: Weighing, piece: Piece, own: readonly Weighed[]): Float64Array {
  const scenes = scenesOf(weighing, piece, own);
  const names = own.map(({ answerer }) => answerer);
  const others = answerersIn(scenes).filter((answerer) => !names.includes(answerer));
  const places = placesOf(piece.shape);
  const evidence = new Float64Array(places ** own.length);
  const at = new Map<number, number>();
  const placeIn = (answerer: number): number => at.get(answerer) ?? 0;
  for (let cell = 0; cell < evidence.length; cell++) {
    names.forEach((name, index) => {
      at.set(name, Math.floor(cell / places ** (names.length - 1 - index)) % places);
    });
    evidence[cell] = averaged(others, 0);
  }
  return evidence;

  function averaged(left: readonly number[], from: number): number {
    const answerer = left[from];
    if (answerer === undefined) return likelihoodIn(piece, scenes, placeIn);
    const table = tableFor(weighing, piece, answerer);
    let sum = 0;
    for (let place = 0; place < places; place++) {
      const share = table[place] ?? 0;
      if (share === 0) continue;
      at.set(answerer, place);
      sum += share * averaged(left, from + 1);
    }
    return sum;
  }
}
