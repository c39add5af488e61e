import type { JSX } from 'preact';
import { conditionName } from '../../../models/condition-name.ts';
import { conditionsShown } from '../../../models/conditions-shown.ts';
import { powerBefore } from '../../../models/power-before.ts';
import { takenHere } from '../../../models/taken-here.ts';
import { understandingOutOfTurn } from '../../../models/understanding-of.ts';
import { Action } from '../../../parts/action.tsx';
import { ConditionStrip } from '../../../parts/condition-strip.tsx';
import { Desk } from '../desk.tsx';
import { LackList } from '../lack-list.tsx';
import { MainAction } from '../main-action.tsx';
import { QuietHazards } from '../quiet-hazards.tsx';
import { ReadingDesk } from '../reading-desk.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';
import { WhereToTouch } from '../where-to-touch.tsx';

/** Something must be seen before this may be done: it is taken right here, or one goes on all the same with a reason. */
export function HeldStep({ app, job, session, question }: StepProps<'held'>): JSX.Element {
  const { section, reading, lacking } = question;
  const { take, changes } = takenHere(session, lacking);
  const before = powerBefore(session);
  const foot = (
    <>
      {reading !== null && section.kind === 'check' && (
        <Action rank="quiet" keys="Alt C" onAct={() => (job.dialog.value = { dialog: 'cannot-read' })}>
          Cannot read
        </Action>
      )}
      {section.kind === 'fault' && reading === null && (
        <Action rank="quiet" onAct={() => (job.dialog.value = { dialog: 'decline' })}>
          Put it aside
        </Action>
      )}
      <Action rank="quiet" onAct={() => (job.dialog.value = { dialog: 'override' })}>
        Go on all the same
      </Action>
    </>
  );
  const wanted = changes.map(({ condition, wanted: is }) => `${conditionName(condition)} ${is}`).join(', ');
  return (
    <>
      <StepBody>
        <StepHead session={session} title={section.title} hasField={take !== null && changes.length === 0} />
        <p class="task">{reading === null ? 'See this before the work' : `See this before ${reading.is}`}</p>
        <LackList session={session} lacking={lacking} />
        {take !== null && (
          <>
            <ConditionStrip
              power={take.power}
              changed={take.power !== null && before !== null && before !== take.power}
              conditions={conditionsShown(session, take.when)}
              tools={take.with}
              setUp={take.set}
            />
            <WhereToTouch session={session} reading={take} />
          </>
        )}
        <QuietHazards session={session} />
      </StepBody>
      {take === null ? (
        <Desk job={job} foot={foot}>
          <MainAction
            hint="It comes out of another step; what was read stays known."
            onAct={() => (job.dialog.value = { dialog: 'go' })}
          >
            Choose where to go on
          </MainAction>
        </Desk>
      ) : changes.length > 0 ? (
        <Desk job={job} foot={foot}>
          <MainAction
            hint={`${take.is} follows.`}
            onAct={() =>
              void job.answer({
                say: 'arrange',
                conditions: Object.fromEntries(changes.map((each) => [each.condition, each.wanted])),
              })
            }
          >
            {`It is so: ${wanted}`}
          </MainAction>
        </Desk>
      ) : (
        <ReadingDesk
          key={take.id}
          {...{ app, job, session, foot }}
          reading={take}
          place={{ at: 1, of: 1 }}
          understood={understandingOutOfTurn(session, take, job.typed.value)}
        />
      )}
    </>
  );
}
