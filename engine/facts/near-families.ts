import type { Fault } from '../model/fault.ts';
import { nearest } from '../names/nearest.ts';
import type { FactsContext } from './facts-context.ts';
import { renameFix } from './rename-fix.ts';

/** Two families of one file that differ by a letter or two may be one, written twice: told at the later one.
 *  @param foreign those known from other files */
export function nearFamilies(foreign: readonly Fault[], own: readonly Fault[], context: FactsContext): void {
  const met = new Set(foreign.flatMap(({ family }) => family ?? []));
  for (const { id, family } of own) {
    if (family === undefined || met.has(family)) continue;
    const near = nearest(family, met).filter((other) => Math.abs(other.length - family.length) < 3);
    met.add(family);
    if (near.length === 0) continue;
    const span = context.spanOf(['faults', id, 'family']);
    context.at(span, { code: 'near-family', family, near }, renameFix(span, family, near));
  }
}
