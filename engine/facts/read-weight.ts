import type { Fault } from '../model/fault.ts';
import type { Path } from '../model/front-matter.ts';
import { nearest } from '../names/nearest.ts';
import type { FactsContext } from './facts-context.ts';
import { isTable, numberOf } from './raw.ts';
import { renameFix } from './rename-fix.ts';

/** `18`, or by board class `{ 486: 18, 586: 3 }`; over all classes it is then their mean.
 *  @param boards the classes there are; null where any can be meant */
export function readWeight(
  raw: unknown,
  path: Path,
  boards: readonly string[] | null,
  context: FactsContext,
): Pick<Fault, 'weight' | 'weights'> {
  if (!isTable(raw)) return { weight: numberOf(raw) ?? 1, weights: {} };
  const given = context.keysOf(path, raw).flatMap((name) => {
    if (boards !== null && !boards.includes(name)) {
      const near = nearest(name.slice(0, 60), boards);
      const span = context.spanOf([...path, name], 'key');
      context.at(span, { code: 'no-class-named', name, boards, near }, renameFix(span, name, near));
    }
    const weight = numberOf(raw[name]);
    return weight === null ? [] : [[name, weight] as const];
  });
  const sum = given.reduce((total, [, weight]) => total + weight, 0);
  return { weight: given.length === 0 ? 1 : sum / given.length, weights: Object.fromEntries(given) };
}
