import type { LinkContext } from './link-context.ts';

/** A section that nothing is made of: rules would only complain of what is missing. */
export function leaveOpen({ open }: Pick<LinkContext, 'open'>): null {
  for (const aspect of ['ways', 'faults', 'readings'] as const) open.add(aspect);
  return null;
}
