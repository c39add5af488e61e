import type { JSX } from 'preact';
import { nameHere } from '../../../../engine/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';

/** Whether the board does what the tree is for. */
export function SymptomStep({ job, session, question }: StepProps<'symptom'>): JSX.Element {
  const { tree } = session.loaded;
  return (
    <>
      <StepBody>
        <StepHead session={session} title="Does the board show this?" />
        <p class="quoted">{tree.symptom}</p>
        <dl class="facts">
          {question.given.map(({ reading, band }) => (
            <div key={reading}>
              <dt>{nameHere(session, reading)}</dt>
              <dd>{band}</dd>
            </div>
          ))}
        </dl>
      </StepBody>
      <Desk
        job={job}
        foot={
          <Action rank="quiet" onAct={() => void job.answer({ say: 'symptom', same: false })}>
            No, something else
          </Action>
        }
      >
        <MainAction
          hint="It counts as the first thing known of this board."
          onAct={() => void job.answer({ say: 'symptom', same: true })}
        >
          Yes, it does this
        </MainAction>
      </Desk>
    </>
  );
}
