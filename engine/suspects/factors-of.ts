import type { Piece } from './pieces.ts';
import { evidenceOf, tableFor } from './scenes.ts';
import type { Suspected } from './suspected.ts';
import type { Weighing } from './weighing.ts';

/** How likely one piece of evidence is under each hypothesis. */
export interface Factors {
  /** In the order of the hypotheses; 1 where it is linked to other readings and has to be told together with them. */
  readonly factors: Float64Array;
  /** Hypotheses under which it is linked. */
  readonly linked: readonly number[];
}

/** @param suspected whose pairs stand in the order (0, 1), (0, 2) … (1, 2) … */
export function factorsOf(weighing: Weighing, suspected: Suspected, piece: Piece): Factors {
  const { singles, none, size } = suspected;
  const factors = new Float64Array(size).fill(1);
  const linked: number[] = [];
  const also = new Set(piece.looks.flatMap((look) => look.also));
  const alone = piece.table === null ? weighing.aloneTables(piece.reading) : null;
  const tableOf = (answerer: number): Float64Array | null =>
    alone === null ? tableFor(weighing, piece, answerer) : (alone[answerer] ?? null);
  const isFree = [...also].every((answerer) => tableOf(answerer) !== null);
  const freeTable = (answerer: number): Float64Array | null =>
    isFree && !also.has(answerer) ? tableOf(answerer) : null;
  const some = piece.looks.some(({ running }) => running);
  const kindOf = (answerer: number): number => (some && weighing.isSometimes(answerer) ? 1 : 0);
  const ofOne = evidences((kind) => [{ answerer: -1, sometimes: kind === 1 }]);
  const kinds = singles.map(kindOf);
  const tables = singles.map(freeTable);

  tables.forEach((table, at) => {
    if (table === null) linked.push(at);
    else factors[at] = dot(table, ofOne(kinds[at] ?? 0));
  });
  if (suspected.pairs) addPairs();
  const last = size - 1;
  const unlisted = freeTable(none);
  if (unlisted === null) linked.push(last);
  else factors[last] = dot(unlisted, ofOne(0));
  return { factors, linked };

  function addPairs(): void {
    const both = evidences((kind) => [
      { answerer: -1, sometimes: kind >= 2 },
      { answerer: -2, sometimes: kind % 2 === 1 },
    ]);
    let at = singles.length;
    for (let first = 0; first < singles.length; first++) {
      const table = tables[first] ?? null;
      const kind = 2 * (kinds[first] ?? 0);
      const steady = table && rowTimes(table, both(kind));
      const passing = some && table !== null ? rowTimes(table, both(kind + 1)) : steady;
      for (let second = first + 1; second < singles.length; second++, at++) {
        const other = tables[second] ?? null;
        const beside = kinds[second] === 1 ? passing : steady;
        if (beside === null || other === null) linked.push(at);
        else factors[at] = dot(other, beside);
      }
    }
  }

  function evidences(
    own: (kind: number) => Parameters<typeof evidenceOf>[2],
  ): (kind: number) => Float64Array {
    const known = new Map<number, Float64Array>();
    return (kind) => {
      const evidence = known.get(kind) ?? evidenceOf(weighing, piece, own(kind));
      known.set(kind, evidence);
      return evidence;
    };
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < a.length; at++) sum += (a[at] as number) * (b[at] as number);
  return sum;
}

/** What is left for the others once the first is averaged over: a vector times a matrix of as many rows. */
export function rowTimes(row: Float64Array, matrix: Float64Array): Float64Array {
  const width = matrix.length / row.length;
  const result = new Float64Array(width);
  for (let first = 0; first < row.length; first++) {
    const share = row[first] as number;
    if (share === 0) continue;
    for (let at = 0; at < width; at++) {
      result[at] = (result[at] as number) + share * (matrix[first * width + at] as number);
    }
  }
  return result;
}
