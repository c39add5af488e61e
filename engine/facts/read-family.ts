import type { Fault } from '../model/fault.ts';
import type { Path } from '../model/front-matter.ts';
import { checkName } from './check-name.ts';
import type { FactsContext } from './facts-context.ts';
import { textOf } from './raw.ts';

/** What a fault is one of: `clock`. */
export function readFamily(raw: unknown, path: Path, context: FactsContext): Pick<Fault, 'family'> {
  const family = textOf(raw);
  return family !== null && checkName(family, 'family', path, 'value', context) ? { family } : {};
}
