import { eachOf, fillMissing, isBag, withChanged } from './fill-missing.ts';

const ofTree = { conditions: [] };
const ofReading = { call: false, from: null, like: null, when: {}, onlyIf: [], usual: null };
const ofFault = { weights: {}, sets: {}, onlyIf: [], which: null };
const ofSection: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  task: { sets: {}, onlyIf: [] },
  fault: { onlyIf: [], proofTries: {} },
};

/**
 * A compiled tree of before there were conditions, procedures and derived readings, with what it could not know filled in.
 * Its digest stays: jobs and records name it by that.
 *
 * @param data anything; what is no such tree comes back as it is, for `problemsOfCompiledTree` to tell
 */
export function upgradeTree(data: unknown): unknown {
  const changes: readonly [string, (value: unknown) => unknown][] = [
    ['readings', eachOf((reading) => fillMissing(reading, ofReading))],
    ['faults', eachOf((fault) => fillMissing(fault, ofFault))],
    ['sections', eachOf(upgradeSection)],
  ];
  return changes.reduce((tree, [key, change]) => withChanged(tree, key, change), fillMissing(data, ofTree));
}

function upgradeSection(section: unknown): unknown {
  const kind = isBag(section) ? section.kind : null;
  const defaults = typeof kind === 'string' && Object.hasOwn(ofSection, kind) ? ofSection[kind] : undefined;
  return defaults === undefined ? section : fillMissing(section, defaults);
}
