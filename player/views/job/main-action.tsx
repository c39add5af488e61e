import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { Action } from '../../parts/action.tsx';
import { useKeys } from '../../parts/use-keys.ts';

interface MainActionProps {
  readonly children: string;
  readonly onAct: () => void;
  readonly disabled?: boolean;
  /** Id of the form it submits: Enter in one of its fields takes it as well. */
  readonly form?: string;
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
  form,
  hint = '',
}: MainActionProps): JSX.Element {
  const shown = useRef(0);
  useLayoutEffect(() => {
    shown.current = performance.now();
  }, []);
  const act = () => {
    if (!disabled && performance.now() - shown.current > settling) onAct();
  };
  useKeys({ Enter: act });
  return (
    <>
      <Action
        rank="main"
        keys="Enter"
        disabled={disabled}
        {...(form === undefined ? { onAct: act } : { form })}
      >
        {children}
      </Action>
      <p class="understanding hint">{hint}</p>
    </>
  );
}
