import type { JSX } from 'preact';
import { Prose } from '../../../parts/prose.tsx';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { QuietHazards } from '../quiet-hazards.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';
import { useResolve } from '../use-resolve.ts';

/** The job goes on in another tree. */
export function HandOverStep({ job, session, question }: StepProps<'hand-over'>): JSX.Element {
  const { section, tree } = question;
  const resolve = useResolve(session);
  return (
    <>
      <StepBody>
        <StepHead session={session} title={section.title} />
        <p class="task">The way on leads into another tree.</p>
        {tree !== null && <p class="quoted">{tree.symptom}</p>}
        <QuietHazards session={session} />
        <Prose blocks={section.blocks} resolve={resolve} />
        <p class="hint">What was read stays known there, and the record stays one.</p>
      </StepBody>
      <Desk job={job}>
        <MainAction onAct={() => void job.answer({ say: 'hand-over' })}>Go on there</MainAction>
      </Desk>
    </>
  );
}
