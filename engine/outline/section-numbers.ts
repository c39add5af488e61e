import type { Section } from '../model/section.ts';

/** The printed number of every section, by id: in the order of the file, those of a procedure below the section that
 *  follows it.
 *
 *      find-the-short → 12      find-the-short.halve-it → 12.1
 *
 *  A section that only leads to another tree has none. */
export function sectionNumbers(sections: readonly Section[]): ReadonlyMap<string, string> {
  const numbers = new Map<string, string>();
  const counts = new Map<string, number>();
  for (const { id, kind } of sections) {
    if (kind === 'hand-over') continue;
    const above = callerOf(id);
    const count = (counts.get(above) ?? 0) + 1;
    counts.set(above, count);
    const prefix = numbers.get(above);
    numbers.set(id, prefix === undefined ? String(count) : `${prefix}.${count}`);
  }
  return numbers;
}

/** The section that follows the procedure which `id` belongs to; empty for a section of the tree itself. */
export const callerOf = (id: string): string => id.slice(0, Math.max(0, id.lastIndexOf('.')));
