/** What a bench asks of a board sheet. The compiler's way from its text is in `compile-board.ts`. */
export { fitBoard } from './fit-board.ts';
export { fittingAllows } from './fitting-allows.ts';
export { parsePositions } from './parse-positions.ts';
export { pointsOf } from './points-of.ts';
export { positionsFor, type WayToSet } from './positions-for.ts';
export { type Positions, positionsText } from './positions-text.ts';
export { settingAt } from './setting-at.ts';
export { suitsSetting } from './suits-setting.ts';
