import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import { mends } from '../model/mends.ts';
import type { Section } from '../model/section.ts';
import { pathOf } from '../run/index.ts';
import type { TypedSettings } from './auto-answer.ts';
import type { Parting } from './case-result.ts';
import { everySetting } from './every-setting.ts';
import { partingOf } from './parting-of.ts';
import { type Arrival, everyWalk } from './walk-fault.ts';

/** How the walks of one fault's own readings went. */
export interface FaultResult {
  readonly fault: Fault;
  /** How many walks were tried, over the settings and all that the fault can show. */
  readonly walks: number;
  /** There are more ways than were tried. */
  readonly more: boolean;
  /** The first walk that came out elsewhere; null where every one arrived. */
  readonly lost: LostWalk | null;
}

export interface LostWalk {
  readonly settings: TypedSettings;
  readonly path: readonly Section[];
  readonly expected: string;
  readonly parted: Parting | null;
  /** Why an answer was refused, where that ended the walk. */
  readonly refused: string | null;
}

/** Walks for each kind of board, at the most. */
const mostWalks = 60;

/** Walks a tree once for each fault and everything it can show, and says whether each walk finds it. */
export const runFaults = (
  tree: CompiledTree,
  board: CompiledBoard | null = null,
  most = mostWalks,
): readonly FaultResult[] => tree.faults.map((fault) => runFault(tree, fault, board, most));

function runFault(tree: CompiledTree, fault: Fault, board: CompiledBoard | null, most: number): FaultResult {
  let walks = 0;
  let more = false;
  for (const settings of everySetting(tree)) {
    let here = 0;
    for (const arrival of everyWalk(tree, fault, settings, board)) {
      here += 1;
      const lost = lostWalk(tree, fault, arrival, settings);
      if (lost !== null) return { fault, walks: walks + here, more, lost };
      if (here === most) break;
    }
    walks += here;
    more ||= here === most;
  }
  return { fault, walks, more, lost: null };
}

function lostWalk(
  { sections }: CompiledTree,
  fault: Fault,
  { arrived, session, refused }: Arrival,
  settings: TypedSettings,
): LostWalk | null {
  if (arrived) return null;
  const home = sections.find((section) => mends(section, fault.id));
  const path = pathOf(session.position);
  const parted = home === undefined ? null : partingOf(sections, path, home.id);
  return { settings, path, expected: home?.title ?? fault.is, parted, refused };
}
