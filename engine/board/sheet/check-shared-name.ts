import type { FactsContext } from '../../facts/facts-context.ts';
import type { Path } from '../../model/front-matter.ts';
import { nearest } from '../../names/nearest.ts';

/** A name that no shared file declares may be a tree's own; one that is nearly a shared name is told. */
export function checkSharedName(
  name: string,
  of: 'reading' | 'setting',
  shared: readonly { readonly id: string }[],
  path: Path,
  context: FactsContext,
): void {
  if (shared.some(({ id }) => id === name)) return;
  const near = nearest(
    name.slice(0, 60),
    shared.map(({ id }) => id),
  );
  if (near.length > 0) context.atKey(path, { code: 'near-shared-name', of, name, near });
}
