import type { Fault } from '../model/fault.ts';
import type { Drill } from './drill.ts';
import { followed } from './tree-session.ts';

/** The reading that the tree asks for now; null where it asks for none: it has come to a fault, or to an end. */
export const nextOf = (drill: Drill): string | null =>
  drill.state === 'running' ? followed(drill).wants : null;

/** The fault that the tree has led to; null before that, and where it leads to none. */
export function ledTo(drill: Drill): Fault | null {
  const { question } = followed(drill);
  return question.ask === 'remedy' ? question.fault : null;
}
