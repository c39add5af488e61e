import type { Section } from '../model/section.ts';
import { reach, reversed } from '../rules/reach.ts';
import { waysAmong } from '../rules/ways-of.ts';
import type { Parting } from './case-result.ts';

/** Where a walk along `path` left every way to the section `expected`; null where it never had one. */
export function partingOf(
  sections: readonly Section[],
  path: readonly Section[],
  expected: string,
): Parting | null {
  const leading = reach([expected], reversed(waysAmong(sections)));
  const at = path.findLastIndex(({ id }) => leading.has(id));
  const section = path[at];
  return section === undefined ? null : { section: section.title, next: path[at + 1]?.title ?? null };
}
