import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { openWorkOf } from '../../../../engine/job/index.ts';
import { placeOfRoute } from '../../../models/route.ts';
import { TextField } from '../../../parts/text-field.tsx';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { ProofDone } from '../proof-done.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';

/** Everything in the proof is good. */
export function ClosingStep({ app, job, session }: StepProps<'closing'>): JSX.Element {
  const note = useSignal('');
  const open = openWorkOf(session.entries);
  const close = async () => {
    if (await job.answer({ say: 'close', mended: true, note: note.value.trim() })) {
      app.ports.browser.go(placeOfRoute({ screen: 'record', id: job.id }), 'push');
    }
  };
  return (
    <>
      <StepBody>
        <StepHead session={session} title="Mended, and proven" why={false} />
        <ProofDone session={session} />
        {open.length > 0 && (
          <>
            <h2>Still open</h2>
            <ul class="plain-list">
              {open.map(({ text, entry }) => (
                <li key={entry}>{text}</li>
              ))}
            </ul>
          </>
        )}
        <TextField
          label="A word for the record"
          hint="What the owner should know: advice, care, what to watch"
          value={note.value}
          onType={(text) => (note.value = text)}
          tall
        />
      </StepBody>
      <Desk job={job}>
        <MainAction hint="The record is shown next, to print or to save." onAct={() => void close()}>
          Close it as mended
        </MainAction>
      </Desk>
    </>
  );
}
