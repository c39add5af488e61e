import type { JSX } from 'preact';
import { nameHere } from '../../../../engine/run/index.ts';
import { conditionsShown } from '../../../models/conditions-shown.ts';
import { asShown } from '../../../parts/as-shown.ts';
import { ConditionStrip } from '../../../parts/condition-strip.tsx';
import { Inlines } from '../../../parts/inlines.tsx';
import { Prose } from '../../../parts/prose.tsx';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { QuietHazards } from '../quiet-hazards.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';
import { useResolve } from '../use-resolve.ts';

/** A procedure is to be followed: which one, with what, and what can come out of it. */
export function CallStep({ job, session, question }: StepProps<'call'>): JSX.Element {
  const { section } = question;
  const { sections } = session.loaded;
  const resolve = useResolve(session);
  return (
    <>
      <StepBody>
        <StepHead session={session} title={section.title} />
        <p class="task">Follow "{section.procedureTitle}".</p>
        <ConditionStrip
          power={null}
          changed={false}
          conditions={conditionsShown(session, {})}
          tools={[]}
          setUp={null}
        />
        {section.given.length > 0 && (
          <dl class="facts">
            {section.given.map(({ name, is, value }) => (
              <div key={name}>
                <dt>{is}</dt>
                <dd>{asShown(nameHere(session, value))}</dd>
              </div>
            ))}
          </dl>
        )}
        <QuietHazards session={session} />
        <Prose blocks={section.blocks} resolve={resolve} />
        <h2>It ends in one of these</h2>
        <ul class="plain-list ends">
          {section.ends.map(({ end, target, remark }) => (
            <li key={end}>
              <strong>{end.replaceAll('-', ' ')}</strong>
              <span class="end-to">→ {sections.get(target)?.title ?? target}</span>
              {remark.length > 0 && (
                <span class="hint">
                  <Inlines inlines={remark} resolve={resolve} />
                </span>
              )}
            </li>
          ))}
        </ul>
      </StepBody>
      <Desk job={job}>
        <MainAction
          hint="Its steps follow one by one, and lead back here."
          onAct={() => void job.answer({ say: 'done' })}
        >
          Begin the procedure
        </MainAction>
      </Desk>
    </>
  );
}
