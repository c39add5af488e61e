import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { OpenJob } from '../../models/open-job.ts';
import { Action } from '../../parts/action.tsx';

interface DeskProps {
  readonly job: OpenJob;
  readonly children: ComponentChildren;
  /** Lesser ways on, beside those that every step has. */
  readonly foot?: ComponentChildren;
}

/** Where the answer is given: it stays at the foot of the screen, so that field and main action never move. */
export function Desk({ job, children, foot }: DeskProps): JSX.Element {
  const desk = useRef<HTMLElement>(null);
  useEffect(() => {
    const node = desk.current;
    if (node === null || typeof ResizeObserver === 'undefined') return;
    const root = document.documentElement.style;
    const observer = new ResizeObserver(() => root.setProperty('--desk', `${node.offsetHeight}px`));
    observer.observe(node);
    return () => {
      observer.disconnect();
      root.removeProperty('--desk');
    };
  }, []);
  return (
    <section class="desk" ref={desk} aria-label="Answer">
      <div class="graduated" aria-hidden="true" />
      <div class="desk-face">{children}</div>
      <footer class="desk-foot">
        <Action rank="quiet" keys="Alt B" onAct={() => void job.answer({ say: 'back' })}>
          Back
        </Action>
        {foot}
        <span class="roomy">
          <Action rank="quiet" keys="Alt N" onAct={() => (job.dialog.value = { dialog: 'note' })}>
            Note
          </Action>
        </span>
        <Action rank="quiet" keys="Alt M" onAct={() => (job.dialog.value = { dialog: 'more' })}>
          More
        </Action>
      </footer>
    </section>
  );
}
