import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LinkedTree } from '../link/linked-tree.ts';
import { mends } from '../model/mends.ts';
import type { NotExact } from '../paths/paths.ts';
import { pathsOf, walkableOf } from '../paths/paths-of.ts';
import { possibleUsually } from '../suspects/possible-usually.ts';
import { conditionFindings } from './condition-findings.ts';
import { faultFindings } from './fault-findings.ts';
import type { FaultWalk } from './fault-walk.ts';
import { faultWalks } from './fault-walks.ts';
import { pathFindings } from './path-findings.ts';
import { powerFindings } from './power-findings.ts';
import { toolFindings } from './tool-findings.ts';

/** What can be known of a tree before anybody switches on. */
export interface Analysis {
  /** Beside what the rules tell, in the order of the file. */
  readonly diagnostics: readonly Diagnostic[];
  /** One for each fault that has a section and can show the symptom. */
  readonly faults: readonly FaultWalk[];
  /** What was not looked at in full, and why. */
  readonly notExact: readonly NotExact[];
}

const nothing: Analysis = { diagnostics: [], faults: [], notExact: [] };

/** Looks at every walk through a tree, which takes longer than a keystroke. A tree whose names and links do not hold together
 *  yet is left to the rules. The same tree gives the same analysis. */
export function analyse(tree: LinkedTree): Analysis {
  const paths = pathsOf(tree);
  if (paths === null) return nothing;
  const faults = faultWalks(walkableOf(tree), (fault) => possibleUsually(tree.facts, fault));
  const diagnostics = [
    ...pathFindings(tree, paths),
    ...faultFindings(tree, paths, faults),
    ...conditionFindings(tree),
    ...powerFindings(tree),
    ...toolFindings(tree),
  ].toSorted((one, other) => one.span.from - other.span.from || one.span.to - other.span.to);
  return {
    diagnostics,
    faults,
    notExact: [...paths.notExact, ...faults.flatMap((walk) => unfollowed(walk, tree))],
  };
}

function unfollowed({ fault, notFollowed }: FaultWalk, { sections }: LinkedTree): readonly NotExact[] {
  if (notFollowed === 0) return [];
  const home = sections.find(({ section }) => mends(section, fault));
  const share = Math.max(1, Math.round(notFollowed * 100));
  const why = `the ways of the fault "${fault}" are too many: ${share} % of them were not followed`;
  return [{ section: home?.section.id ?? '', why }];
}
