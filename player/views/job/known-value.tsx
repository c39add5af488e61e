import type { JSX } from 'preact';
import type { Known, Session } from '../../../engine/run/index.ts';
import { observationText } from '../../../engine/scale/index.ts';
import { Action } from '../../parts/action.tsx';
import { asShown } from '../../parts/as-shown.ts';

interface KnownValueProps {
  readonly session: Session;
  readonly known: Known;
  readonly onConfirm: () => void;
}

/** The value from before, offered while nothing is typed. */
export function KnownValue({ session, known, onConfirm }: KnownValueProps): JSX.Element {
  const value = known.observation === null ? known.bands.join(' or ') : observationText(known.observation);
  const since = known.remedies < session.position.remedies.length;
  return (
    <p class="known">
      <span>
        {known.given ? 'The symptom says' : 'Read before'}: <strong>{asShown(value)}</strong>
        {known.stale && ', when the board was set otherwise'}
        {since && ', before the repair'}
      </span>
      <Action keys="=" onAct={onConfirm}>
        Still so
      </Action>
    </p>
  );
}
