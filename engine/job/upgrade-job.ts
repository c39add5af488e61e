import { eachOf, fillMissing, withChanged } from './fill-missing.ts';
import { upgradeTree } from './upgrade-tree.ts';

const ofJob = { laterTrees: [], board: null };
const ofObservation = { doubt: null };
const ofUsed = { twin: null };

/**
 * A job of before there were board sheets, instruments, known-good boards and hand-overs, with what it could not know
 * filled in: it leads to the same place.
 *
 * @param data anything; what is no such job comes back as it is, for `problemsOfJob` to tell
 */
export function upgradeJob(data: unknown): unknown {
  const changes: readonly [string, (value: unknown) => unknown][] = [
    ['tree', upgradeTree],
    ['laterTrees', eachOf(upgradeTree)],
    ['entries', eachOf((entry) => withChanged(entry, 'observation', upgradeObservation))],
  ];
  return changes.reduce((job, [key, change]) => withChanged(job, key, change), fillMissing(data, ofJob));
}

const upgradeObservation = (observation: unknown): unknown =>
  withChanged(fillMissing(observation, ofObservation), 'used', (used) => fillMissing(used, ofUsed));
