import type { ProofName } from '../read/section-syntax.ts';
import { type LinkContext, report } from './link-context.ts';
import { placeIn } from './place-in.ts';

/** How many tries the proof asks of the readings that count them. */
export function resolveTries(
  proof: readonly ProofName[],
  from: number,
  context: LinkContext,
): Readonly<Record<string, number>> {
  const asked = proof.flatMap(({ tries, name, ...place }) => {
    const measure = context.readings.get(name)?.measure;
    if (tries === null || measure === undefined) return [];
    const span = placeIn(from, place);
    if (measure.kind !== 'tries') {
      report(context, { code: 'tries-not-counted', name }, span);
      return [];
    }
    const { enough } = measure;
    if (tries < enough) report(context, { code: 'too-few-tries', name, tries, enough }, span);
    return [[name, tries] as const];
  });
  return Object.fromEntries(asked);
}
