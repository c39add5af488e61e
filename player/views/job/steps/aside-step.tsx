import type { JSX } from 'preact';
import { Action } from '../../../parts/action.tsx';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';

/** The walk came to a fault that was tried or put aside already. */
export function AsideStep({ job, session, question }: StepProps<'aside'>): JSX.Element {
  return (
    <>
      <StepBody>
        <StepHead session={session} title={question.section.title} />
        <p class="task">This fault was tried or put aside, and something is still wrong.</p>
        <p>
          The suspects are ranked again. Go on at the check that would tell the likeliest apart. A reading
          that fits nothing is worth taking again: look first whether the tip touched the right point.
        </p>
        <Action keys="Alt U" onAct={() => (job.dialog.value = { dialog: 'suspects' })}>
          Show the suspects
        </Action>
      </StepBody>
      <Desk
        job={job}
        foot={
          <Action rank="quiet" onAct={() => (job.dialog.value = { dialog: 'close' })}>
            Close the job
          </Action>
        }
      >
        <MainAction onAct={() => (job.dialog.value = { dialog: 'go' })}>Choose where to go on</MainAction>
      </Desk>
    </>
  );
}
