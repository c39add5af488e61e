import type { JSX } from 'preact';
import type { CallSection } from '../../../engine/model/section.ts';
import { nameHere, type Session } from '../../../engine/run/index.ts';
import { callsAround } from '../../models/calls-around.ts';
import { asShown } from '../../parts/as-shown.ts';

/** Which procedure this step belongs to, and what it was given. */
export function CallCrumbs({ session }: { readonly session: Session }): JSX.Element | null {
  const calls = callsAround(session);
  if (calls.length === 0) return null;
  return (
    <p class="crumbs">
      {calls.map((call) => (
        <span key={call.id}>
          {call.procedureTitle}
          {call.given.length > 0 && <small> {givenWords(session, call)}</small>}
        </span>
      ))}
    </p>
  );
}

const givenWords = (session: Session, { given }: CallSection): string =>
  given.map(({ value }) => asShown(nameHere(session, value))).join(', ');
