import type { BoardState } from '../model/entry.ts';
import type { Fault } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import { normalBandsOf } from '../scale/index.ts';
import { shownBands } from './shown-bands.ts';

/** One reading as evidence: the bands it can be in. */
export interface Evidence {
  readonly reading: string;
  readonly bands: readonly string[];
  readonly board: BoardState;
  /** Faults that were on the board then and have been mended since. */
  readonly alsoPresent: readonly string[];
}

/** A reading that a fault cannot have shown. */
export interface Contradiction {
  readonly reading: string;
  readonly showed: readonly string[];
  readonly wouldShow: readonly string[];
}

/** Whether a fault can still be the cause. */
export interface Standing {
  readonly fault: Fault;
  /** Empty: still possible. */
  readonly contradictions: readonly Contradiction[];
}

interface Tree {
  readonly readings: readonly Reading[];
  readonly faults: readonly Fault[];
}

/** Which faults can have shown everything that was read, heaviest first. Strict: one reading is
 *  enough to rule a fault out. */
export function standings(tree: Tree, evidence: readonly Evidence[]): readonly Standing[] {
  const support = supportsOf(tree);
  return tree.faults
    .map((fault) => ({
      fault,
      contradictions: evidence.flatMap((piece) => contradictionOf(fault, piece, tree, support)),
    }))
    .sort((a, b) => b.fault.weight - a.fault.weight);
}

type Support = ReadonlyMap<string, readonly string[] | 'any'>;

const known = new WeakMap<Tree, ReadonlyMap<string, Support>>();

/** What each fault can show. It follows from the tree alone and is asked after every answer, so it is kept. */
function supportsOf(tree: Tree): ReadonlyMap<string, Support> {
  const supports = known.get(tree) ?? new Map(tree.faults.map((fault) => [fault.id, supportOf(tree, fault)]));
  known.set(tree, supports);
  return supports;
}

/** The bands a fault can show, by reading. */
function supportOf(tree: Tree, fault: Fault): Support {
  const bands = [...shownBands(tree, fault)].map(
    ([reading, { how, shares }]) =>
      [
        reading,
        how === 'free' || how === 'unknown'
          ? 'any'
          : shares.filter(({ share }) => share > 0).map(({ band }) => band),
      ] as const,
  );
  return new Map(bands);
}

function contradictionOf(
  fault: Fault,
  { reading, bands, board, alsoPresent }: Evidence,
  tree: Tree,
  support: ReadonlyMap<string, Support>,
): readonly Contradiction[] {
  if (board === 'running' && fault.comes === 'sometimes') return [];
  const alone = support.get(fault.id)?.get(reading) ?? 'any';
  const others = alsoPresent.map((id) => support.get(id)?.get(reading) ?? 'any');
  if (alone === 'any' || bands.some((band) => canShow(band, alone, others, normalOf(tree, reading))))
    return [];
  return [{ reading, showed: bands, wouldShow: alone }];
}

/** Two faults on one reading: the one that is out of normal is seen. */
function canShow(
  band: string,
  alone: readonly string[],
  others: readonly (readonly string[] | 'any')[],
  normal: readonly string[],
): boolean {
  const shows = (one: readonly string[] | 'any') => one === 'any' || one.includes(band);
  return normal.includes(band) ? shows(alone) && others.every(shows) : shows(alone) || others.some(shows);
}

const normalOf = (tree: Tree, reading: string): readonly string[] => {
  const found = tree.readings.find(({ id }) => id === reading);
  return found === undefined ? [] : normalBandsOf(found);
};
