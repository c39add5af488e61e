import type { Section } from '../model/section.ts';
import type { Position } from './position.ts';

/** The sections walked to reach `position`, first to last, each visit once. */
export function pathOf(position: Position): readonly Section[] {
  const path: Section[] = [];
  for (let at: Position | null = position; at !== null; at = at.previous) {
    if (at.section !== null && at.section !== path[0]) path.unshift(at.section);
  }
  return path;
}
