import { silent, soft } from '../order/ground.ts';
import type { SignsGround } from './signs.ts';

/** Something that can be left of one row once every reading was taken. */
export interface Left {
  readonly share: number;
  /** In which share of these cases some reading is out of normal. */
  readonly detected: number;
  /** Faults that can show the same, its own among them. */
  readonly faults: ReadonlySet<number>;
}

/** Combinations of what a row can show that are told apart; beyond, what might be left is taken to be left. */
const mostCases = 4096;

/** What is left together with a row when all readings were taken, over all that it can show. Rows that say nothing of a reading can show
 *  whatever is seen. */
export function leftTogether(ground: SignsGround, row: number): readonly Left[] {
  const { rows, columns, fault } = ground;
  const others = Array.from({ length: rows }, (_, at) => at).filter(
    (other) => fault[other] !== fault[row] && !isApart(ground, row, other),
  );
  const deciding = decidingColumns(ground, row, others);
  const still = stillNormal(ground, row, deciding);
  let cases: readonly Case[] = [{ share: 1, normal: true, others }];
  for (const column of deciding) cases = cases.flatMap((one) => after(ground, row, column, one));
  return cases.map(({ share, normal, others: left }) => ({
    share,
    detected: normal ? 1 - still : 1,
    faults: new Set([fault[row] as number, ...left.map((other) => fault[other] as number)]),
  }));

  /** Readings that part the row from another in some cases, those that part most first. */
  function decidingColumns(of: SignsGround, one: number, all: readonly number[]): readonly number[] {
    const chosen: number[] = [];
    let count = 1;
    for (let column = 0; column < columns; column += 1) {
      if (of.band[one * columns + column] !== soft) continue;
      const mine = of.support[one * columns + column] as number;
      const parts = all.some((other) => {
        const theirs = of.support[other * columns + column] as number;
        return theirs !== 0 && (mine & ~theirs) !== 0;
      });
      count *= parts ? bitsIn(mine) : 1;
      if (parts && count <= mostCases) chosen.push(column);
    }
    return chosen;
  }
}

interface Case {
  readonly share: number;
  readonly normal: boolean;
  readonly others: readonly number[];
}

function after(ground: SignsGround, row: number, column: number, one: Case): readonly Case[] {
  const { columns, support } = ground;
  const shares = ground.shares[row * columns + column];
  return [...(shares ?? [])].flatMap((share, band) => {
    if (share === 0) return [];
    const left = one.others.filter((other) => {
      const theirs = support[other * columns + column] as number;
      return theirs === 0 || ((theirs >> band) & 1) === 1;
    });
    const normal = one.normal && (((ground.normal[column] as number) >> band) & 1) === 1;
    return [{ share: one.share * share, normal, others: left }];
  });
}

/** Whether some reading parts two rows whatever they show. */
export function isApart({ columns, support }: SignsGround, one: number, other: number): boolean {
  for (let column = 0; column < columns; column += 1) {
    const mine = support[one * columns + column] as number;
    const theirs = support[other * columns + column] as number;
    if (mine !== 0 && theirs !== 0 && (mine & theirs) === 0) return true;
  }
  return false;
}

/** In which share of the cases all readings but these are normal. */
function stillNormal(ground: SignsGround, row: number, but: readonly number[]): number {
  let share = 1;
  for (let column = 0; column < ground.columns; column += 1) {
    if (but.includes(column)) continue;
    const place = row * ground.columns + column;
    const normal = ground.normal[column] as number;
    const band = ground.band[place] as number;
    if (band === silent) continue;
    if (band !== soft) share *= (normal >> band) & 1;
    else
      share *= (ground.shares[place] as Float64Array).reduce(
        (sum, part, each) => ((normal >> each) & 1 ? sum + part : sum),
        0,
      );
  }
  return share;
}

function bitsIn(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count += 1;
  return count;
}
