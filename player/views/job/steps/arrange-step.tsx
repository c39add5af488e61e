import type { JSX } from 'preact';
import { conditionName } from '../../../models/condition-name.ts';
import { Action } from '../../../parts/action.tsx';
import { useKeys } from '../../../parts/use-keys.ts';
import { Desk } from '../desk.tsx';
import { KnownValue } from '../known-value.tsx';
import { MainAction } from '../main-action.tsx';
import { QuietHazards } from '../quiet-hazards.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';

/** The board is brought into other conditions before a reading is taken. */
export function ArrangeStep({ job, session, question }: StepProps<'arrange'>): JSX.Element {
  const { section, reading, changes, known } = question;
  const offersKnown = known !== null && known.bands.length > 0;
  const confirm = () => {
    if (offersKnown) void job.answer({ say: 'confirm' });
  };
  useKeys({ '=': confirm });
  const wanted = changes.map(({ condition, wanted: is }) => `${conditionName(condition)} ${is}`).join(', ');
  return (
    <>
      <StepBody>
        <StepHead session={session} title={section.title} />
        <p>
          <strong>{reading.is}</strong> is taken with the board like this:
        </p>
        <ul class="turns">
          {changes.map(({ condition, now, wanted: is }) => (
            <li key={condition}>
              <span class="turn-name">{conditionName(condition)}</span>
              <span class="turn-from">{now}</span>
              <span aria-hidden="true">→</span>
              <span class="unseen">to</span>
              <strong class="turn-to">{is.toUpperCase()}</strong>
            </li>
          ))}
        </ul>
        <p class="hint">Switch off and pull the plug before anything is taken out or put in.</p>
        <QuietHazards session={session} />
      </StepBody>
      <Desk
        job={job}
        foot={
          section.kind === 'check' && (
            <Action rank="quiet" keys="Alt C" onAct={() => (job.dialog.value = { dialog: 'cannot-read' })}>
              Cannot read
            </Action>
          )
        }
      >
        {offersKnown && <KnownValue session={session} known={known} onConfirm={confirm} />}
        <MainAction
          hint="The reading follows."
          onAct={() => void job.answer({ say: 'arrange', conditions: null })}
        >
          {`It is so: ${wanted}`}
        </MainAction>
      </Desk>
    </>
  );
}
