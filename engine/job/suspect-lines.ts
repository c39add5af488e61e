import type { JobRecord } from '../model/record.ts';
import { perCent } from '../suspects/per-cent.ts';

/** What the board may have, where nothing was proved: a line for each suspect. */
export function suspectLines({ suspects }: Pick<JobRecord, 'suspects'>): readonly string[] {
  if (suspects === null) return [];
  const lines = suspects.ranked.map(
    ({ is, share, moved }) => `${is}: ${perCent(share)}${moved === '' ? '' : ` (${moved})`}`,
  );
  return suspects.fits ? lines : ['The readings fit no fault of the tree; nearest to them are:', ...lines];
}
