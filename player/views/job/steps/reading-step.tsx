import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { powerBefore } from '../../../models/power-before.ts';
import { ConditionStrip } from '../../../parts/condition-strip.tsx';
import { Prose } from '../../../parts/prose.tsx';
import { TouchPoints } from '../../../parts/touch-points.tsx';
import { ProofList } from '../proof-list.tsx';
import { QuietHazards } from '../quiet-hazards.tsx';
import { ReadingDesk } from '../reading-desk.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';
import { useResolve } from '../use-resolve.ts';

/** One reading of a check or a proof. */
export function ReadingStep(props: StepProps<'reading'>): JSX.Element {
  const { session, question } = props;
  const { section, reading, purpose } = question;
  const resolve = useResolve(session);
  const before = powerBefore(session);
  const proof = purpose === 'proof';
  // The next reading is taken elsewhere: what to touch comes into sight again.
  useEffect(() => window.scrollTo?.({ top: 0 }), [reading.id]);
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
          tools={reading.with}
          setUp={reading.set}
        />
        <TouchPoints points={reading.points} tools={reading.with} />
        <QuietHazards session={session} />
        {proof ? (
          <ProofList session={session} question={question} />
        ) : (
          <Prose blocks={section.blocks} resolve={resolve} />
        )}
      </StepBody>
      <ReadingDesk key={reading.id} {...props} />
    </>
  );
}
