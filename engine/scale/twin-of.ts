import type { Present, Twin } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';

/** What limits call the known-good board's value of the same reading. */
export const twinName = 'twin';

/** What a known-good board shows in a reading: as read in this job, else by the board sheet, else as usual. */
export function twinOf({ id, usual }: Reading, { twins }: Present): Twin | null {
  return twins.get(id) ?? (usual && { value: usual, from: 'usual' });
}
