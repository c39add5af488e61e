import type { Belief } from './belief.ts';
import { weighed } from './weighed-belief.ts';

/** So much better must none of these explain what was read than every fault before that is said. */
const clearly = 4;

/** Whether some fault explains what was read. False where none of these is the likeliest, or makes what was read clearly likelier
 *  than every suspect does, whatever the priors say: these readings fit no fault in this tree. */
export function fitsOf(belief: Belief): boolean {
  const { logs, shares } = weighed(belief);
  if (logs.length < 2) return false;
  const listed = logs.subarray(0, -1).reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const likeliest = shares.slice(0, -1).reduce((most, share) => Math.max(most, share), 0);
  return likeliest >= (shares.at(-1) ?? 0) && (logs.at(-1) ?? 0) - listed <= Math.log(clearly);
}
