import { factorsOf, rowTimes } from './factors-of.ts';
import type { Piece } from './pieces.ts';
import { evidenceOf, tableFor } from './scenes.ts';
import type { Suspected } from './suspected.ts';
import { courseOn, groupsOf, noCourse } from './together.ts';
import type { Weighing } from './weighing.ts';

/** A factor is far above 1e-8, so that the product of so many is a number still. */
const mostFactors = 32;

/** The natural logarithm of how likely all that was seen is under each hypothesis. */
export function logsOf(weighing: Weighing, suspected: Suspected, pieces: readonly Piece[]): Float64Array {
  const logs = new Float64Array(suspected.size);
  const product = new Float64Array(suspected.size).fill(1);
  const together = new Map<number, Piece[]>();
  pieces.forEach((piece, index) => {
    const { factors, linked } = factorsOf(weighing, suspected, piece);
    for (let at = 0; at < factors.length; at++) {
      product[at] = (product[at] as number) * (factors[at] as number);
    }
    for (const at of linked) {
      const known = together.get(at);
      if (known === undefined) together.set(at, [piece]);
      else known.push(piece);
    }
    if (index % mostFactors === mostFactors - 1 || index === pieces.length - 1) {
      for (let at = 0; at < logs.length; at++) logs[at] = (logs[at] ?? 0) + Math.log(product[at] ?? 0);
      product.fill(1);
    }
  });
  for (const [at, linked] of together) {
    logs[at] = (logs[at] ?? 0) + logTogether(weighing, suspected.own[at] ?? [], linked);
  }
  return logs;
}

function logTogether(weighing: Weighing, own: readonly number[], pieces: readonly Piece[]): number {
  return groupsOf(weighing, own, pieces).reduce((sum, group) => {
    const [only, second] = group;
    const isOne = only !== undefined && second === undefined && !isAlsoThere(only, own);
    return sum + (isOne ? logAlone(weighing, own, only) : logInTurn(weighing, own, group));
  }, 0);
}

const logInTurn = (weighing: Weighing, own: readonly number[], group: readonly Piece[]): number =>
  group.reduce((courses, piece) => courseOn(weighing, own, courses, piece), noCourse).log;

const isAlsoThere = ({ looks }: Piece, own: readonly number[]): boolean =>
  looks.some(({ also }) => also.some((answerer) => own.includes(answerer)));

/** Nothing that it comes out together with was read. */
function logAlone(weighing: Weighing, own: readonly number[], piece: Piece): number {
  const evidence = evidenceOf(
    weighing,
    piece,
    own.map((answerer) => ({ answerer, sometimes: weighing.isSometimes(answerer) })),
  );
  const left = own.reduce<Float64Array>(
    (values, answerer) => rowTimes(tableFor(weighing, piece, answerer), values),
    evidence,
  );
  return Math.log(left[0] ?? 0);
}
