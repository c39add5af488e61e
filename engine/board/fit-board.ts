import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Measure, Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import { settingText } from '../scale/setting-text.ts';
import { fitMeasure } from './fit-measure.ts';
import { suitsSetting } from './suits-setting.ts';

/** A tree as it holds for one board model. */
interface Fitted {
  readonly tree: CompiledTree;
  /** What the sheet says and this tree cannot use: sentences without a final full stop. */
  readonly misfits: readonly string[];
}

/**
 * Puts the limits and usual settings of a board sheet in the place of a tree's own.
 *
 * Bands, normal bands and digest stay the tree's: outcomes and faults must mean the same on every board. What the
 * sheet says of readings and settings that the tree does not have is left aside without a word, for a sheet serves many trees.
 */
export function fitBoard(tree: CompiledTree, board: CompiledBoard): Fitted {
  const misfits: string[] = [];
  const settings = tree.settings.map((setting) => fitSetting(setting, board, misfits));
  const readings = fitReadings(tree, board, misfits);
  return { tree: { ...tree, settings, readings }, misfits };
}

function fitSetting(setting: Setting, board: CompiledBoard, misfits: string[]): Setting {
  const { id } = setting;
  const values = board.tables.flatMap((table) => (table.setting === id ? table.rows : []));
  const odd = values.find(({ value }) => !suitsSetting(setting, value));
  if (odd !== undefined)
    misfits.push(
      `The jumper table of "${id}" gives ${settingText(odd.value)}, which is no value that this tree knows of it`,
    );
  const usual = Object.hasOwn(board.settings, id) ? board.settings[id] : undefined;
  if (usual === undefined) return setting;
  if (suitsSetting(setting, usual)) return { ...setting, usual } as Setting;
  misfits.push(
    `The sheet's usual value of "${id}", ${settingText(usual)}, is no value that this tree knows of it`,
  );
  return setting;
}

/** What the sheet says of a reading holds for those that are like it and were cut in the same way. */
function fitReadings(
  { readings, settings }: CompiledTree,
  board: CompiledBoard,
  misfits: string[],
): readonly Reading[] {
  const known = new Map(readings.map((reading) => [reading.id, reading]));
  const others = new Map(board.readings.map((other) => [other.reading, other]));
  const fitted = new Map<string, Reading>();
  for (const { reading: id, measure, source } of board.readings) {
    const reading = known.get(id);
    if (reading === undefined) continue;
    const result = fitMeasure(reading.measure, measure, settings);
    if (result.ok) fitted.set(id, { ...reading, measure: result.measure, source: source ?? reading.source });
    else misfits.push(`The sheet's limits of "${id}" are not used: ${result.why}`);
  }
  return readings.map((reading) => {
    const origin = originOf(reading, known, (id) => others.has(id));
    const found = fitted.get(origin.id);
    return found === undefined ? reading : { ...reading, measure: found.measure, source: found.source };
  });
}

/** The reading that this one takes its limits from: itself, or the nearest one that it is like and that the sheet speaks of. */
function originOf(
  reading: Reading,
  known: ReadonlyMap<string, Reading>,
  isNamed: (id: string) => boolean,
): Reading {
  const seen = new Set<string>();
  let at = reading;
  while (!isNamed(at.id) && at.like !== null && !seen.has(at.id)) {
    seen.add(at.id);
    const next = known.get(at.like);
    if (next === undefined || !isSame(next.measure, reading.measure)) break;
    at = next;
  }
  return at;
}

const isSame = (a: Measure, b: Measure): boolean => JSON.stringify(a) === JSON.stringify(b);
