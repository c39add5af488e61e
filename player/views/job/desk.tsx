import type { ComponentChildren, JSX } from 'preact';
import type { OpenJob } from '../../models/open-job.ts';
import { Action } from '../../parts/action.tsx';
import { useDeskHeight } from '../use-desk-height.ts';

interface DeskProps {
  readonly job: OpenJob;
  readonly children: ComponentChildren;
  /** Lesser ways on, beside those that every step has. */
  readonly foot?: ComponentChildren;
}

/** Where the answer is given: it stays at the foot of the screen, so that field and main action never move. */
export function Desk({ job, children, foot }: DeskProps): JSX.Element {
  const desk = useDeskHeight();
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
