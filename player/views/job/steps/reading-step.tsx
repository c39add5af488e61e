import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { conditionsShown } from '../../../models/conditions-shown.ts';
import { powerBefore } from '../../../models/power-before.ts';
import { understandingOf } from '../../../models/understanding-of.ts';
import { Action } from '../../../parts/action.tsx';
import { ConditionStrip } from '../../../parts/condition-strip.tsx';
import { Prose } from '../../../parts/prose.tsx';
import { BoardStateToggle } from '../board-state-toggle.tsx';
import { KnownGoodBoard } from '../known-good-board.tsx';
import { ProofList } from '../proof-list.tsx';
import { QuietHazards } from '../quiet-hazards.tsx';
import { ReadingDesk } from '../reading-desk.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';
import { useResolve } from '../use-resolve.ts';
import { WhereToTouch } from '../where-to-touch.tsx';

/** One reading of a check or a proof. */
export function ReadingStep({ app, job, session, question }: StepProps<'reading'>): JSX.Element {
  const { section, reading, purpose, known, place, tries, lacks } = question;
  const resolve = useResolve(session);
  const before = powerBefore(session);
  const proof = purpose === 'proof';
  // The next reading is taken elsewhere: what to touch comes into sight again.
  useEffect(() => window.scrollTo?.({ top: 0 }), [reading.id]);
  const foot = (
    <>
      {!proof && (
        <Action rank="quiet" keys="Alt C" onAct={() => (job.dialog.value = { dialog: 'cannot-read' })}>
          Cannot read
        </Action>
      )}
      <BoardStateToggle job={job} session={session} />
    </>
  );
  return (
    <>
      <StepBody>
        <StepHead
          session={session}
          title={proof ? `Prove: ${section.title}` : section.title}
          hasField
          why={!proof}
        />
        <ConditionStrip
          power={reading.power}
          changed={reading.power !== null && before !== null && before !== reading.power}
          conditions={conditionsShown(session, reading.when)}
          tools={reading.with}
          setUp={reading.set}
        />
        {lacks !== null && (
          <p class="lacks">
            There is no {lacks} at this bench.{' '}
            {proof ? 'The proof waits until there is one.' : 'Say "Cannot read" to go on as far as it goes.'}
          </p>
        )}
        <WhereToTouch session={session} reading={reading} />
        <KnownGoodBoard job={job} session={session} reading={reading} />
        <QuietHazards session={session} />
        {proof ? (
          <ProofList session={session} question={question} />
        ) : (
          <Prose blocks={section.blocks} resolve={resolve} />
        )}
      </StepBody>
      <ReadingDesk
        key={reading.id}
        {...{ app, job, session, reading, place, tries, known, foot }}
        understood={understandingOf(session, reading, job.typed.value)}
      />
    </>
  );
}
