import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Action } from '../../parts/action.tsx';
import { useKeys } from '../../parts/use-keys.ts';

interface MainActionProps {
  readonly children: string;
  readonly onAct: () => void;
  readonly disabled?: boolean;
  /** It stands in a form: Enter in one of its fields takes it as well. */
  readonly submits?: boolean;
  /** What it means, in the line that stands under a field on other steps. */
  readonly hint?: string;
}

/** A second Enter within this time belongs to the step before. */
const settling = 350;

/** The one way on of a step without a field, at the same place as everywhere; Enter takes it. */
export function MainAction({
  children,
  onAct,
  disabled = false,
  submits = false,
  hint = '',
}: MainActionProps): JSX.Element {
  const shown = useRef(0);
  useEffect(() => {
    shown.current = performance.now();
  }, []);
  const act = () => {
    if (!disabled && performance.now() - shown.current > settling) onAct();
  };
  useKeys({ Enter: act });
  return (
    <>
      <Action rank="main" keys="Enter" disabled={disabled} {...(submits ? { submit: true } : { onAct: act })}>
        {children}
      </Action>
      <p class="understanding hint">{hint}</p>
    </>
  );
}
