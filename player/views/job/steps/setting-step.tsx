import type { JSX } from 'preact';
import { Action } from '../../../parts/action.tsx';
import { Desk } from '../desk.tsx';
import { JumperTable } from '../jumper-table.tsx';
import { SettingAnswer } from '../setting-answer.tsx';
import { SettingList } from '../setting-list.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';

/** How this board is set, one setting after the other. */
export function SettingStep({ job, session, question }: StepProps<'setting'>): JSX.Element {
  const { setting } = question;
  const hasTable = session.board?.tables.some((table) => table.setting === setting.id) ?? false;
  return (
    <>
      <StepBody>
        <StepHead session={session} title="How is this board set?" hasField why={false} />
        {!hasTable && (
          <p class="hint">
            Read the jumpers and the marking of the CPU. What this board should show is worked out from it.
          </p>
        )}
        <JumperTable
          session={session}
          setting={setting}
          how="noted"
          typed={job.typed.value}
          onType={(text) => (job.typed.value = text)}
        />
        <SettingList session={session} now={setting.id} />
      </StepBody>
      <Desk
        job={job}
        foot={
          <Action rank="quiet" onAct={() => void job.answer({ say: 'setting-unknown', setting: setting.id })}>
            Not known
          </Action>
        }
      >
        <SettingAnswer
          job={job}
          session={session}
          setting={setting}
          how="noted"
          typed={job.typed}
          onDone={() => {}}
        />
      </Desk>
    </>
  );
}
