import type { CompiledTree } from '../../model/compiled-tree.ts';
import type { TreeMatrix } from '../matrix/tree-matrix.ts';
import { groundOf } from '../order/ground.ts';

/** What would tell the faults of a group apart. */
export type Splitting =
  /** A reading that is declared and that the tree does not take. */
  | { readonly by: 'declared'; readonly reading: string }
  /** All of them show it out of normal alike: which of the many alike is wrong, once each is told apart. */
  | { readonly by: 'members'; readonly reading: string }
  /** All of them show it out of normal alike: the same once more in another condition. */
  | { readonly by: 'condition'; readonly reading: string; readonly condition: string; readonly value: string }
  /** Nothing that is there comes near. */
  | { readonly by: 'new' };

/** What is nearest at hand to tell a group of faults apart. What is declared is computed; the others are where to look first.
 *  @param group places of the faults
 *  @param declared all declared readings as a matrix */
export function splittingOf(
  tree: CompiledTree,
  group: readonly number[],
  taken: TreeMatrix,
  declared: TreeMatrix,
): readonly Splitting[] {
  const used = new Set(taken.columns.map(({ id }) => id));
  const unused = declared.columns.flatMap(({ id, reading }, column) =>
    reading !== null && !used.has(id) && tellsApart(declared, group, column)
      ? [{ by: 'declared' as const, reading: id }]
      : [],
  );
  if (unused.length > 0) return unused;
  const common = tree.readings.filter(({ id }) => group.every((place) => isWrong(tree, place, id)));
  const found = common.flatMap(({ id, measure, when, from }): readonly Splitting[] => {
    if (measure.kind === 'each') return [{ by: 'members', reading: id }];
    const open =
      from !== null
        ? undefined
        : tree.conditions.find((condition) => isUntried(tree, id, when, condition.id));
    const value = open?.values.find((one) => one !== (when[open.id] ?? open.values[0]));
    return open === undefined || value === undefined
      ? []
      : [{ by: 'condition', reading: id, condition: open.id, value }];
  });
  return found.length > 0 ? found : [{ by: 'new' }];
}

function tellsApart({ matrix, faultOf }: TreeMatrix, group: readonly number[], column: number): boolean {
  const { support, columns } = groundOf(matrix);
  const shown = group.map((place) =>
    faultOf.reduce(
      (bits, fault, row) => (fault === place ? bits | (support[row * columns + column] as number) : bits),
      0,
    ),
  );
  return new Set(shown).size > 1;
}

/** Whether a fault's own words say that a reading is out of normal. */
function isWrong({ faults, readings }: CompiledTree, place: number, id: string): boolean {
  const normal = readings.find((reading) => reading.id === id)?.normal ?? 'any';
  const shows = faults[place]?.shows.find((one) => one.reading === id);
  return normal !== 'any' && shows !== undefined && shows.shares.every(({ band }) => !normal.includes(band));
}

/** Whether no reading takes this one in the other value of a condition. */
const isUntried = (
  { readings }: CompiledTree,
  id: string,
  when: Readonly<Record<string, string>>,
  condition: string,
): boolean => !readings.some((reading) => reading.like === id && reading.when[condition] !== when[condition]);
