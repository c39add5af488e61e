import { entropyOf } from '../suspects/entropy-of.ts';
import { plainPrediction } from '../suspects/plain-prediction.ts';
import type { WeighedBelief } from '../suspects/weighed-belief.ts';

type Weighing = WeighedBelief['weighing'];

/** What one answerer makes every reading of a tree show as long as nothing was read that bears on it. It follows from the tree
 *  alone, and most of it is good for every belief. */
export interface PlainRow {
  /** The bands of all readings, one reading after the other. */
  readonly likely: Float64Array;
  /** What each reading leaves open, in bits. */
  readonly doubt: Float64Array;
  /** 1 for a reading that nothing else bears on. */
  readonly alone: Uint8Array;
}

/** First column of each reading in a plain row. */
const starts = new WeakMap<Weighing, Int32Array>();
const rows = new WeakMap<Weighing, Map<number, PlainRow>>();

export function plainStart(weighing: Weighing): Int32Array {
  const before = starts.get(weighing);
  if (before !== undefined) return before;
  const { readings } = weighing.tree;
  const start = new Int32Array(readings.length + 1);
  for (let at = 0; at < readings.length; at += 1) {
    start[at + 1] = (start[at] as number) + weighing.shape(at).bands.length;
  }
  starts.set(weighing, start);
  return start;
}

export function plainRow(weighing: Weighing, answerer: number): PlainRow {
  const ofWeighing = rows.get(weighing) ?? new Map<number, PlainRow>();
  rows.set(weighing, ofWeighing);
  const before = ofWeighing.get(answerer);
  if (before !== undefined) return before;
  const { readings } = weighing.tree;
  const start = plainStart(weighing);
  const likely = new Float64Array(start.at(-1) ?? 0);
  const doubt = new Float64Array(readings.length);
  const alone = new Uint8Array(readings.length);
  for (const [at, { from }] of readings.entries()) {
    if (from !== null || !weighing.answers(answerer).isAlone(at)) continue;
    const bands = plainPrediction(weighing, answerer, at);
    likely.set(bands, start[at]);
    doubt[at] = entropyOf(bands);
    alone[at] = 1;
  }
  const made = { likely, doubt, alone };
  ofWeighing.set(answerer, made);
  return made;
}
