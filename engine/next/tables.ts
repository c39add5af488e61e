import { bandsOf } from '../scale/index.ts';
import type { Belief } from '../suspects/belief.ts';
import { entropyOf } from '../suspects/entropy-of.ts';
import { WeighedBelief } from '../suspects/weighed-belief.ts';
import type { Check } from './check.ts';
import { groupRows } from './group-rows.ts';
import { plainRow, plainStart } from './plain-rows.ts';

/** What every hypothesis makes every check show, as plain numbers.
 *
 *      likely     columns of check 0      columns of check 1     …
 *      row 0      low   good  high        none  pulses
 *      row 1      …                                              each check's part of a row adds up to 1
 */
export interface Tables {
  readonly checks: number;
  /** Columns of one row. */
  readonly width: number;
  /** `start[c]` is the first column of check c; one more stands at the end. */
  readonly start: Int32Array;
  /** `likely[row * width + column]`. */
  readonly likely: Float64Array;
  /** `doubt[row * checks + c]`: what check c leaves open when it is known what the board has, in bits. */
  readonly doubt: Float64Array;
  /** Place of each row in the belief's hypotheses. */
  readonly places: readonly number[];
  /** How likely each row is; adds up to 1. */
  readonly shares: Float64Array;
  /** Rows with the same number are told apart by no check. */
  readonly groups: Int32Array;
}

/** Hypotheses less likely than this move no figure that anybody reads. */
const least = 1e-7;

export function tablesOf(belief: Belief, checks: readonly Check[]): Tables {
  const start = new Int32Array(checks.length + 1);
  for (const [at, { reading }] of checks.entries())
    start[at + 1] = (start[at] ?? 0) + bandsOf(reading).length;
  const width = start[checks.length] ?? 0;
  const places = belief.shares.flatMap((share, place) => (share > least ? [place] : []));
  const total = places.reduce((sum, place) => sum + (belief.shares[place] ?? 0), 0);
  const shares = Float64Array.from(places, (place) => (belief.shares[place] ?? 0) / total);
  const tables: Tables = {
    checks: checks.length,
    width,
    start,
    likely: new Float64Array(places.length * width),
    doubt: new Float64Array(places.length * checks.length),
    places,
    shares,
    groups: new Int32Array(places.length),
  };
  if (belief instanceof WeighedBelief) fillFrom(belief, checks, tables);
  else fill(tables, (place, at) => belief.predict(place, checks[at]?.reading.id ?? ''));
  return { ...tables, groups: groupRows(tables.likely, width, places.length) };
}

type Predict = (hypothesis: number, check: number) => ArrayLike<number>;

function fill(tables: Tables, predict: Predict): void {
  for (const [row, place] of tables.places.entries()) {
    for (let at = 0; at < tables.checks; at += 1) fillOne(tables, row, at, predict(place, at));
  }
}

function fillOne(
  { likely, doubt, width, start, checks }: Tables,
  row: number,
  at: number,
  bands: ArrayLike<number>,
): void {
  const to = row * width + (start[at] as number);
  for (let band = 0; band < bands.length; band += 1) likely[to + band] = bands[band] as number;
  doubt[row * checks + at] = entropyOf(bands);
}

/** The same from the belief's own tables: what was read bears on few of the readings that are left. */
function fillFrom(belief: WeighedBelief, checks: readonly Check[], tables: Tables): void {
  const { weighing, suspected, sightings } = belief;
  const at = Int32Array.from(checks, ({ reading }) => weighing.ground.places.get(reading.id) ?? -1);
  const seen = new Uint8Array(weighing.tree.readings.length);
  for (const { reading } of sightings) seen[weighing.ground.places.get(reading) ?? -1] = 1;
  const from = plainStart(weighing);
  const { likely, doubt, width, start } = tables;
  for (const [row, place] of tables.places.entries()) {
    const [answerer, second] = suspected.own[place] ?? [];
    const plain = answerer === undefined || second !== undefined ? null : plainRow(weighing, answerer);
    for (let check = 0; check < checks.length; check += 1) {
      const reading = at[check] as number;
      if (plain === null || plain.alone[reading] === 0 || seen[reading] === 1) {
        fillOne(tables, row, check, belief.prediction(place, reading));
        continue;
      }
      const to = row * width + (start[check] as number);
      const first = from[reading] as number;
      const count = (from[reading + 1] as number) - first;
      for (let band = 0; band < count; band += 1) likely[to + band] = plain.likely[first + band] as number;
      doubt[row * checks.length + check] = plain.doubt[reading] as number;
    }
  }
}
