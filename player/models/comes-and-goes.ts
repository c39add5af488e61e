import type { Session } from '../../engine/run/index.ts';

/** Whether it matters if the board fails or runs just now: a fault of this tree comes and goes, or the board was seen to
 *  run. */
export const comesAndGoes = ({ loaded, entries }: Session): boolean =>
  loaded.tree.faults.some(({ comes }) => comes === 'sometimes') ||
  entries.some(({ kind }) => kind === 'runs');
