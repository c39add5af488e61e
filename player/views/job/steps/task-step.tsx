import type { JSX } from 'preact';
import { conditionsShown } from '../../../models/conditions-shown.ts';
import { minutesText } from '../../../models/minutes-text.ts';
import { Action } from '../../../parts/action.tsx';
import { ConditionStrip } from '../../../parts/condition-strip.tsx';
import { Inlines } from '../../../parts/inlines.tsx';
import { Prose } from '../../../parts/prose.tsx';
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
        <ConditionStrip
          power={null}
          changed={false}
          conditions={conditionsShown(session, section.sets)}
          tools={[]}
          setUp={null}
        />
        <p class="task">
          <Inlines inlines={section.task} resolve={resolve} />
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
          <MainAction
            key="wait"
            hint={`About ${minutesText(section.minutes)} of work, then ${minutesText(section.wait)} of waiting.`}
            onAct={() => void job.answer({ say: 'wait' })}
          >
            {`Done: start the wait of ${minutesText(section.wait)}`}
          </MainAction>
        ) : (
          <MainAction
            key="done"
            hint={`About ${minutesText(section.minutes)} of work.`}
            onAct={() => void job.answer({ say: 'done' })}
          >
            Done
          </MainAction>
        )}
      </Desk>
    </>
  );
}
