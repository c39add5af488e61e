import type { Named } from '../read/named.ts';
import { type LinkContext, only, report } from './link-context.ts';
import { placeIn } from './place-in.ts';

type NameKind = 'no-reading-named' | 'no-fault-named';

/** The names of a lead line that are declared; the others are reported. A name that stands twice counts once. */
export function resolveNames<T>(
  names: readonly Named[],
  declared: ReadonlyMap<string, T>,
  code: NameKind,
  from: number,
  context: LinkContext,
): T[] {
  return [...new Map(names.map((named) => [named.name, named])).values()].flatMap((named) => {
    const found = declared.get(named.name);
    if (found !== undefined) return [found];
    const span = placeIn(from, named);
    const near = context.near(named.name, declared.keys());
    report(context, { code, name: named.name, near }, span, { fix: only(near, span) });
    context.open.add(code === 'no-fault-named' ? 'faults' : 'readings');
    return [];
  });
}
