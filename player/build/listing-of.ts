import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { TreeListing } from '../ports/trees.ts';

/** What the list of symptoms needs to know of a tree. */
export function listingOf({
  id,
  title,
  symptom,
  boards,
  digest,
  sections,
  readings,
  faults,
}: CompiledTree): TreeListing {
  const counts = { sections: sections.length, readings: readings.length, faults: faults.length };
  const tools = [...new Set(readings.flatMap((reading) => reading.with))];
  return { id, title, symptom, boards, digest, ...counts, tools };
}
