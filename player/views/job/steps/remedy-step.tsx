import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { broughtText } from '../../../../engine/suspects/brought-text.ts';
import { minutesText } from '../../../models/minutes-text.ts';
import { Action } from '../../../parts/action.tsx';
import { Prose } from '../../../parts/prose.tsx';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { PartsFields } from '../parts-fields.tsx';
import { QuietHazards } from '../quiet-hazards.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';
import { useResolve } from '../use-resolve.ts';

interface PartLine {
  readonly what: string;
  readonly cost: string;
}

/** The work that mends the fault, and what went in. */
export function RemedyStep({ job, session, question }: StepProps<'remedy'>): JSX.Element {
  const { section, fault, remedy } = question;
  const resolve = useResolve(session);
  const form = useId();
  const which = useSignal('');
  const lines = useSignal<readonly PartLine[]>(fault.parts.map((what) => ({ what, cost: '' })));
  const needs = [
    ...(fault.minutes === null ? [] : [`about ${minutesText(fault.minutes)}`]),
    ...(fault.tools.length === 0 ? [] : [`with ${fault.tools.join(', ')}`]),
  ];
  const brought = broughtText(fault, session.loaded.faults.values());
  const mend = () => {
    const parts = lines.value
      .filter(({ what }) => what.trim() !== '')
      .map(({ what, cost }) => ({ what: what.trim(), cost: cost.trim() === '' ? null : cost.trim() }));
    void job.answer({ say: 'remedied', which: which.value.trim(), parts });
  };
  return (
    <>
      <StepBody>
        <StepHead session={session} title={section.title} />
        <p class="task">{fault.is}</p>
        {needs.length > 0 && <p class="hint">{needs.join(', ')}</p>}
        {brought !== '' && <p>{brought}.</p>}
        <QuietHazards session={session} />
        <Prose blocks={section.blocks} resolve={resolve} />
        <Prose blocks={remedy.blocks} resolve={resolve} />
        <form
          id={form}
          class="parts-form"
          onSubmit={(event) => {
            event.preventDefault();
            mend();
          }}
        >
          <PartsFields asks={fault.which} which={which} lines={lines} />
        </form>
      </StepBody>
      <Desk
        job={job}
        foot={
          <Action rank="quiet" onAct={() => (job.dialog.value = { dialog: 'decline' })}>
            Put it aside
          </Action>
        }
      >
        <MainAction form={form} hint="The proof follows, reading by reading." onAct={mend}>
          It is done: prove it
        </MainAction>
      </Desk>
    </>
  );
}
