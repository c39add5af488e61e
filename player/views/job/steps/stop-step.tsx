import type { JSX } from 'preact';
import { Action } from '../../../parts/action.tsx';
import { Inlines } from '../../../parts/inlines.tsx';
import { Prose } from '../../../parts/prose.tsx';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { QuietHazards } from '../quiet-hazards.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';
import { useResolve } from '../use-resolve.ts';

/** The tree ends here without a fault. */
export function StopStep({ job, session, question }: StepProps<'stop'>): JSX.Element {
  const { section } = question;
  const resolve = useResolve(session);
  return (
    <>
      <StepBody>
        <StepHead session={session} title={section.title} />
        <p class="task">
          <Inlines inlines={section.reason} resolve={resolve} />
        </p>
        <QuietHazards session={session} />
        <Prose blocks={section.blocks} resolve={resolve} />
        <p class="hint">This tree goes no further here. The job stays on the bench until it is closed.</p>
      </StepBody>
      <Desk
        job={job}
        foot={
          <Action rank="quiet" onAct={() => (job.dialog.value = { dialog: 'go' })}>
            Go on elsewhere
          </Action>
        }
      >
        <MainAction
          hint="It can be taken up again at any time."
          onAct={() => (job.dialog.value = { dialog: 'close' })}
        >
          Close the job
        </MainAction>
      </Desk>
    </>
  );
}
