import { wrap } from '../../prose/plain-text.ts';
import type { Session } from '../../run/index.ts';

/** Where a detour leads back to; empty on the way of the tree. */
export function detourLine({ loaded, position }: Session, width: number): string {
  const { detour } = position;
  if (detour === null || position.section === null) return '';
  const title = loaded.sections.get(detour.section)?.title ?? detour.section;
  return wrap(`On a detour: return leads back to "${title}"`, width);
}
