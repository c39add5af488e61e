import type { Section } from '../model/section.ts';

/** Whether a section was brought along by a call; slugs of headings hold no dot. */
export const isExpanded = ({ id }: Section): boolean => id.includes('.');
