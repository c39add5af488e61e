import { pointsOf } from '../../../engine/board/index.ts';
import type { CompiledBoard } from '../../../engine/model/compiled-board.ts';
import type { Reading } from '../../../engine/model/reading.ts';
import { conditionName } from '../condition-name.ts';
import { narrow } from '../narrow.ts';

/** Checks that ask the same of the board. */
export interface CheckGroup<T> {
  /** `Power off`, `Power on, cards out`. */
  readonly title: string;
  readonly checks: readonly T[];
}

interface Asks {
  readonly reading: Reading;
}

const orders: readonly (readonly [Reading['power'], string])[] = [
  ['off', 'Power off'],
  [null, 'Power as it is'],
  ['on', 'Power on'],
];

/** Checks by what they take: what needs no power first, the board as it came before cards are pulled. Those whose words do
 *  not hold what is typed are left out, and so are groups without checks. */
export function checkGroups<T extends Asks>(
  checks: readonly T[],
  board: CompiledBoard | null,
  typed: string,
): readonly CheckGroup<T>[] {
  const left = narrow(checks, typed, ({ reading }) => wordsOf(reading, board));
  return orders.flatMap(([power, title]) => {
    const here = left.filter(({ reading }) => reading.power === power);
    const wheres = [...new Set(here.map(whenOf))].sort((a, b) => counted(a) - counted(b));
    return wheres.map((when) => ({
      title: when === '' ? title : `${title}, ${when}`,
      checks: here.filter((check) => whenOf(check) === when),
    }));
  });
}

/** Its name, where it is taken and with what. */
function wordsOf(reading: Reading, board: CompiledBoard | null): string {
  const points = board === null ? [] : pointsOf(board, reading).map(({ is }) => is);
  return [reading.is, reading.id, ...reading.points, ...points, ...reading.with].join(' ');
}

/** `cards out, CPU in`; empty where the board is left as it is. */
const whenOf = ({ reading }: Asks): string =>
  Object.entries(reading.when)
    .map(([condition, value]) => `${lowerCase(conditionName(condition))} ${value}`)
    .join(', ');

const lowerCase = (name: string): string => (name === name.toUpperCase() ? name : name.toLowerCase());

const counted = (when: string): number => (when === '' ? 0 : when.split(', ').length);
