import type { JSX } from 'preact';
import { lastFinding } from '../../../models/last-finding.ts';
import { placeOfRoute } from '../../../models/route.ts';
import { Action } from '../../../parts/action.tsx';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';

/** The job is closed. */
export function NothingStep({ app, job, session, question }: StepProps<'nothing'>): JSX.Element {
  return (
    <>
      <StepBody>
        <StepHead
          session={session}
          title={question.mended ? 'Mended, proven and closed' : 'Closed, not mended'}
          why={false}
        />
        <p>{lastFinding(session)}</p>
        <p class="hint">Everything that was read is kept. If the board comes back, take the job up again.</p>
      </StepBody>
      <Desk
        job={job}
        foot={
          <Action rank="quiet" onAct={() => (job.dialog.value = { dialog: 'reopen' })}>
            Take it up again
          </Action>
        }
      >
        <MainAction
          onAct={() => app.ports.browser.go(placeOfRoute({ screen: 'record', id: job.id }), 'push')}
        >
          Show the record
        </MainAction>
      </Desk>
    </>
  );
}
