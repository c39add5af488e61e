import type { ComponentChildren, JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Session } from '../../../engine/run/index.ts';
import { freshFindings } from '../../models/fresh-findings.ts';
import { whyHere } from '../../models/why-here.ts';
import { Inlines } from '../../parts/inlines.tsx';
import { CallCrumbs } from './call-crumbs.tsx';
import { isTouch } from './is-touch.ts';
import { useResolve } from './use-resolve.ts';

interface StepHeadProps {
  readonly session: Session;
  readonly title: string;
  /** The step has a field that takes the focus itself. */
  readonly hasField?: boolean;
  readonly why?: boolean;
}

/** The heading of a step, and the quiet line that says why it follows. */
export function StepHead({ session, title, hasField = false, why = true }: StepHeadProps): JSX.Element {
  const heading = useRef<HTMLHeadingElement>(null);
  const resolve = useResolve(session);
  const because = why ? whyHere(session) : null;
  const findings = freshFindings(session);
  useLayoutEffect(() => {
    window.scrollTo?.({ top: 0 });
    if (!hasField || isTouch()) heading.current?.focus({ preventScroll: true });
  }, [hasField]);
  return (
    <>
      {because !== null && (
        <p class={because.loud ? 'why why-loud' : 'why'}>
          {because.text}.{' '}
          {because.remark.length > 0 && (
            <em>
              <Inlines inlines={because.remark} resolve={resolve} />
            </em>
          )}
        </p>
      )}
      {findings.map((text) => (
        <p key={text} class="finding" role="status">
          {text}
        </p>
      ))}
      <div class="step-title">
        <CallCrumbs session={session} />
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
      </div>
    </>
  );
}

interface StepBodyProps {
  readonly children: ComponentChildren;
}

/** What is to be done; it scrolls behind the desk. */
export function StepBody({ children }: StepBodyProps): JSX.Element {
  return (
    <article class="step" onFocusIn={clearOfDesk}>
      {children}
    </article>
  );
}

/** A browser takes what lies behind the desk for visible, and leaves it there when it gets the focus. */
function clearOfDesk({ target }: FocusEvent): void {
  if (target instanceof HTMLElement && target.matches(':focus-visible')) {
    target.scrollIntoView?.({ block: 'nearest' });
  }
}
