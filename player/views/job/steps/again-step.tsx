import type { JSX } from 'preact';
import type { Session } from '../../../../engine/run/index.ts';
import { lastFinding } from '../../../models/last-finding.ts';
import type { OpenJob } from '../../../models/open-job.ts';
import { Action } from '../../../parts/action.tsx';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { StepBody, StepHead } from '../step.tsx';

interface AgainStepProps {
  readonly job: OpenJob;
  readonly session: Session;
}

/** The job is taken up on a later day. */
export function AgainStep({ job, session }: AgainStepProps): JSX.Element {
  const finding = lastFinding(session);
  const changed = async () => {
    if (await job.answer({ say: 'resume', same: false })) job.dialog.value = { dialog: 'note' };
  };
  return (
    <>
      <StepBody>
        <StepHead session={session} title="Is the symptom still the same?" why={false} />
        <p class="quoted">{session.loaded.tree.symptom}</p>
        {finding !== null && (
          <p>
            <span class="engraved">Found last</span> {finding}
          </p>
        )}
        <p class="hint">
          Switch the board on as far as it was safe last time, and look before anything else.
        </p>
      </StepBody>
      <Desk
        job={job}
        foot={
          <Action rank="quiet" onAct={() => void changed()}>
            No, it is another one
          </Action>
        }
      >
        <MainAction onAct={() => void job.answer({ say: 'resume', same: true })}>
          Yes, still the same
        </MainAction>
      </Desk>
    </>
  );
}
