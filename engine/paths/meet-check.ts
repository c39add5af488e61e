import { type Cell, type Demand, fitting, without } from './cells.ts';
import type { CheckPlan } from './check-plan.ts';

/** Beyond this many cells a check is not looked through. */
const most = 2000;

/** What comes of one set of known bands at a check. */
export interface Met {
  /** For each outcome the combinations that take it; they do not overlap. */
  readonly taken: readonly (readonly Cell[])[];
  /** Combinations that no outcome takes. */
  readonly left: readonly Cell[];
  /** How many cells were looked at. */
  readonly steps: number;
}

/** @param known a cell over the whole scope; null comes back where there are too many cells */
export function meetCheck({ constraints, lines }: CheckPlan, known: Cell): Met | null {
  let steps = 0;
  let open: Cell[] = [known];
  for (const demands of constraints) {
    open = open.flatMap((cell) => parts(cell, demands));
    steps += open.length;
    if (open.length > most) return null;
  }
  const possible = open;
  const taken: (readonly Cell[])[] = [];
  for (const line of lines) {
    steps += open.length;
    if (open.length > most) return null;
    if (line === 'unread') taken.push(possible);
    else if (line === null) {
      taken.push(open);
      open = [];
    } else {
      taken.push(open.flatMap((cell) => parts(cell, [line])));
      open = open.flatMap((cell) => without(cell, line));
    }
  }
  return { taken, left: open, steps };
}

const parts = (cell: Cell, demands: readonly Demand[]): readonly Cell[] =>
  demands.map((demand) => fitting(cell, demand)).filter((part) => part !== null);
