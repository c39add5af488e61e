import type { Reading } from '../model/reading.ts';
import type { Setting, SettingValue } from '../model/setting.ts';
import { fromStored, toStored } from '../quantity/index.ts';
import { bandsOf, settingsOf } from '../scale/index.ts';
import { inputsOf } from './inputs-of.ts';
import { possibleAt } from './possible-at.ts';
import type { PossibleBands } from './possible-bands.ts';

interface Tree {
  readonly readings: readonly Reading[];
  readonly settings: readonly Setting[];
}

const factors = [0.5, 2] as const;

/** What derived readings allow on boards with other settings as well: all at their usual values, and each that they rest on at half and at
 *  twice its own. A jumper may sit wrong, so that what cannot be at the usual values can be at others. */
export function possibleOnAnyBoard(tree: Tree): PossibleBands {
  const readings = new Map(tree.readings.map((reading) => [reading.id, reading]));
  const boards = new Map<string, readonly PossibleBands[]>();
  return (derived, inputs) => {
    const known = boards.get(derived.id) ?? boardsFor(derived, tree, readings);
    boards.set(derived.id, known);
    const all = bandsOf(derived);
    const possible = new Set<string>();
    for (const board of known) {
      for (const band of board(derived, inputs)) possible.add(band);
      if (possible.size === all.length) break;
    }
    return all.filter((band) => possible.has(band));
  };
}

type Values = ReadonlyMap<string, SettingValue | null>;

function boardsFor(
  derived: Reading,
  tree: Tree,
  readings: ReadonlyMap<string, Reading>,
): readonly PossibleBands[] {
  const usual: Values = new Map(tree.settings.map((setting) => [setting.id, setting.usual]));
  const named = new Set(restingOn(derived, tree).flatMap(settingsOf));
  const changing = tree.settings.filter(({ id }) => named.has(id));
  const boards = [usual, ...changing.flatMap((setting) => varied(usual, setting))];
  return boards.map((values) => possibleAt(readings, values));
}

/** The same settings with one of them at half and at twice its usual value. */
function varied(values: Values, { id, kind, usual }: Setting): readonly Values[] {
  if (kind === 'options' || usual === null) return [];
  return factors.map(
    (factor) => new Map([...values, [id, toStored(fromStored(usual).mul(factor), usual.unit)]]),
  );
}

/** The reading and all that it is computed from, down to what is taken. */
function restingOn(derived: Reading, { readings }: Tree): readonly Reading[] {
  const found = new Set([derived]);
  for (const reading of found) {
    const inputs = inputsOf(reading, { readings });
    for (const each of readings) if (inputs.includes(each.id)) found.add(each);
  }
  return [...found];
}
