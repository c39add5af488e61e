import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Job } from '../model/job.ts';
import type { Reading } from '../model/reading.ts';
import type { JobRecord, RecordTree } from '../model/record.ts';
import type { Session } from '../run/index.ts';

export const treeRow = ({ id, title, symptom, digest }: CompiledTree): RecordTree => ({
  id,
  title,
  symptom,
  digest,
});

/** The trees that a job went on with, in order. */
export const laterTreesOf = ({ entries, laterTrees }: Job): JobRecord['laterTrees'] =>
  entries.flatMap((entry) => {
    if (entry.kind !== 'tree') return [];
    const tree = laterTrees.find(({ digest }) => digest === entry.digest);
    return tree === undefined ? [] : [{ ...treeRow(tree), at: entry.at, why: entry.why }];
  });

/** A reading of the present tree, else of one that the job was walked with before. */
export function readingOfJob({ loaded, firstTree, laterTrees }: Session, id: string): Reading | undefined {
  return (
    loaded.readings.get(id) ??
    [...laterTrees, firstTree].flatMap(({ readings }) => readings).find((reading) => reading.id === id)
  );
}

/** The title of a section, of whichever of the job's trees it is. */
export function titleOfJob({ loaded, firstTree, laterTrees }: Session, id: string): string {
  const section =
    loaded.sections.get(id) ??
    [...laterTrees, firstTree].flatMap(({ sections }) => sections).find((each) => each.id === id);
  return section?.title ?? '';
}
