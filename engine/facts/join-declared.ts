import canonicalize from 'canonicalize';
import type { Declared } from '../diagnostics/front-matter-facts.ts';
import type { FactsContext } from './facts-context.ts';

const tables: Readonly<Record<Exclude<Declared, 'parameter'>, string>> = {
  reading: 'readings',
  setting: 'settings',
  fault: 'faults',
  condition: 'conditions',
};

/** What is known from other files, then the file's own. What has the name of something known is told, and left out,
 *  unless both say the same. */
export function joinDeclared<T extends { readonly id: string }>(
  foreign: readonly T[],
  own: readonly T[],
  of: keyof typeof tables,
  context: FactsContext,
): readonly T[] {
  const known = new Map(foreign.map((one) => [one.id, one]));
  const added = own.filter((one) => {
    const other = known.get(one.id);
    if (other === undefined) return true;
    if (canonicalize(one) !== canonicalize(other)) {
      const facts = { code: 'name-clash', name: one.id, of, other: of, elsewhere: true } as const;
      context.atKey([tables[of], one.id], facts);
    }
    return false;
  });
  return [...foreign, ...added];
}
