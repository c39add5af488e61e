import type { OpenJob } from './open-job.ts';
import type { ProposalShown } from './proposal-shown.ts';

/** Leaves the tree's order for a check; a sheet that offered it closes. */
export async function takeDetour(job: OpenJob, { section, reading }: ProposalShown): Promise<void> {
  if (await job.answer({ say: 'detour', section, reading })) job.dialog.value = null;
}
