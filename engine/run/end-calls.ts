import type { Entry } from '../model/entry.ts';
import type { CallSection } from '../model/section.ts';
import { remember } from './remember.ts';
import type { Session } from './session.ts';

/** A step out of a procedure is its end, and that is one more word on the call: a reading whose bands are its ends. Like
 *  every word it stays when somebody goes back. Where two ends lead to the same section, both are possible.
 *  @param before inside the call, or anywhere else */
export function endCalls(before: Session, after: Session, { at }: Entry, index: number): Session {
  const from = before.position.section?.id ?? '';
  const to = after.position.section?.id ?? '';
  if (!from.includes('.') || before.loaded !== after.loaded) return after;
  return callsAround(before, from).reduce((session, { id, ends }) => {
    const isInside = to === id || to.startsWith(`${id}.`);
    const bands = isInside ? [] : ends.filter(({ target }) => target === to).map(({ end }) => end);
    return bands.length === 0
      ? session
      : remember(session, index, { reading: id, bands, observation: null, board: session.boardState, at });
  }, after);
}

/** The calls that a section stands in, the innermost first. */
function callsAround({ loaded }: Session, section: string): readonly CallSection[] {
  const steps = section.split('.');
  return steps
    .map((_, index) => loaded.sections.get(steps.slice(0, -1 - index).join('.')))
    .filter((found) => found?.kind === 'call');
}
