import type { JSX } from 'preact';
import { HazardPlate } from '../../../parts/hazard-plate.tsx';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';
import { useResolve } from '../use-resolve.ts';

/** What can hurt, before anything is touched. */
export function AcknowledgementStep({ job, session, question }: StepProps<'acknowledgement'>): JSX.Element {
  const resolve = useResolve(session);
  const title = question.section?.title ?? 'Before you begin';
  return (
    <>
      <StepBody>
        <StepHead session={session} title={title} />
        {question.hazards.map((hazard) => (
          <HazardPlate key={hazard.digest} hazard={hazard} resolve={resolve} />
        ))}
      </StepBody>
      <Desk job={job}>
        <MainAction
          hint="It stands in the record that this was read. The words stay in sight."
          onAct={() => void job.answer({ say: 'acknowledge' })}
        >
          I have read this
        </MainAction>
      </Desk>
    </>
  );
}
