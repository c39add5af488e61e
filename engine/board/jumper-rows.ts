import type { JumperTable } from '../model/compiled-board.ts';
import type { Positions } from './positions-text.ts';

export type JumperRow = JumperTable['rows'][number];

/** Whether a row can hold with these positions: no jumper sits elsewhere. */
export const mayHold = ({ at }: Pick<JumperRow, 'at'>, positions: Positions): boolean =>
  Object.keys(at).every((jumper) => !Object.hasOwn(positions, jumper) || positions[jumper] === at[jumper]);

/** Whether it holds: every jumper that it names sits where it says. */
export const holds = ({ at }: Pick<JumperRow, 'at'>, positions: Positions): boolean =>
  Object.keys(at).every((jumper) => Object.hasOwn(positions, jumper) && positions[jumper] === at[jumper]);

/** The jumpers that decide a table, in the order in which its rows first name them. */
export const jumpersOf = ({ rows }: JumperTable): readonly string[] => [
  ...new Set(rows.flatMap(({ at }) => Object.keys(at))),
];
