import type { JSX } from 'preact';
import { Action } from '../../../parts/action.tsx';
import { Inlines, Prose } from '../../../parts/prose.tsx';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { QuietHazards } from '../quiet-hazards.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';
import { useResolve } from '../use-resolve.ts';
import { WaitTimer } from '../wait-timer.tsx';

/** Work to be done before the next reading, with its waiting time. */
export function TaskStep({ app, job, session, question }: StepProps<'task'>): JSX.Element {
  const { section, waitingSince } = question;
  const resolve = useResolve(session);
  const waits = section.wait > 0;
  return (
    <>
      <StepBody>
        <StepHead session={session} title={section.title} />
        <p class="task">
          <Inlines inlines={section.task} resolve={resolve} />
        </p>
        <p class="hint">
          About {section.minutes} {section.minutes === 1 ? 'minute' : 'minutes'} of work
          {waits && `, then ${section.wait} of waiting`}.
        </p>
        <QuietHazards session={session} />
        <Prose blocks={section.blocks} resolve={resolve} />
      </StepBody>
      <Desk
        job={job}
        foot={
          waits &&
          waitingSince === null && (
            <Action rank="quiet" onAct={() => void job.answer({ say: 'done' })}>
              Done, without waiting
            </Action>
          )
        }
      >
        {waitingSince !== null && (
          <WaitTimer clock={app.ports.clock} since={waitingSince} minutes={section.wait} />
        )}
        {waits && waitingSince === null ? (
          <MainAction key="wait" onAct={() => void job.answer({ say: 'wait' })}>
            {`Start the ${section.wait} minutes`}
          </MainAction>
        ) : (
          <MainAction key="done" onAct={() => void job.answer({ say: 'done' })}>
            Done
          </MainAction>
        )}
      </Desk>
    </>
  );
}
