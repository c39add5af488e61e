import type { ComponentChildren, JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { isTouch } from '../job/is-touch.ts';

interface StepTitleProps {
  readonly children: ComponentChildren;
  /** The step has a field that takes the focus itself. */
  readonly hasField?: boolean;
}

/** The heading of a step of a drill: what is new is read out from here. */
export function StepTitle({ children, hasField = false }: StepTitleProps): JSX.Element {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    window.scrollTo?.({ top: 0 });
    if (!hasField || isTouch()) heading.current?.focus({ preventScroll: true });
  }, [hasField]);
  return (
    <div class="step-title">
      <h1 ref={heading} tabIndex={-1}>
        {children}
      </h1>
    </div>
  );
}
