import type { Fault } from '../model/fault.ts';
import type { Path } from '../model/front-matter.ts';
import { nearest } from '../names/nearest.ts';
import type { FactsContext } from './facts-context.ts';
import { tableOf } from './raw.ts';
import { readShareOf } from './read-share-of.ts';
import { renameFix } from './rename-fix.ts';

/** Faults that a fault brings along: `{ dead_cpu: 50 % }`. Nothing where it brings none.
 *  @param faults the names there are */
export function readBrings(
  id: string,
  raw: unknown,
  path: Path,
  faults: ReadonlySet<string>,
  context: FactsContext,
): Pick<Fault, 'brings'> {
  const table = tableOf(raw);
  const others = [...faults].filter((name) => name !== id);
  const given = context.keysOf(path, table).flatMap((name) => {
    const place = [...path, name];
    const share = readShareOf(table[name], place, { most: 100, included: true }, context);
    if (name === id) {
      context.atKey(place, { code: 'brings-itself', fault: id });
      return [];
    }
    if (!faults.has(name)) {
      const near = nearest(name.slice(0, 60), others);
      const span = context.spanOf(place, 'key');
      context.at(span, { code: 'no-fault-named', name, near }, renameFix(span, name, near));
      return [];
    }
    return share === null ? [] : [[name, share] as const];
  });
  return given.length === 0 ? {} : { brings: Object.fromEntries(given) };
}
