import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { unlisted } from '../../../engine/practice/drill.ts';
import { listed } from '../../models/listed.ts';
import { asShown } from '../../parts/as-shown.ts';
import { Figure } from '../../parts/figure.tsx';
import { MainAction } from '../job/main-action.tsx';
import { StepBody } from '../job/step.tsx';
import { DrillDesk } from './drill-desk.tsx';
import type { DrillStepProps } from './drill-step-props.ts';
import { StepTitle } from './step-title.tsx';

/** The proof after a remedy, reading by reading; it can fail. */
export function ProofStep({ app, run, drill, place }: DrillStepProps<'proof'>): JSX.Element {
  const { fault, right, proof, shown } = place;
  const done = shown >= proof.length;
  const now = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (done) window.scrollTo?.({ top: 0 });
    else now.current?.scrollIntoView?.({ block: 'nearest' });
  }, [shown]);
  const nameOf = (id: string) => drill.tree.readings.find((one) => one.id === id)?.is ?? id;
  const is =
    drill.tree.faults.find(({ id }) => id === fault)?.is ?? 'None of the faults that this tree lists';
  const failed = proof.slice(0, shown).filter(({ good }) => !good);
  return (
    <>
      <StepBody>
        <StepTitle>
          {done ? (right ? 'Found, and proven' : 'That was not the cause') : `Prove: ${is}`}
        </StepTitle>
        {done && <p class="task">{is}</p>}
        {done && !right && (
          <p role="status">
            {fault === unlisted
              ? 'This board has one of the faults of its tree.'
              : failed.length > 0
                ? `The proof fails at ${listed(failed.map(({ reading }) => `"${nameOf(reading)}"`))}. The fault is still on the board, and the remedy cost its minutes.`
                : 'The readings are good, and yet the board still shows its symptom.'}
          </p>
        )}
        {proof.length > 0 && (
          <ol class="proof">
            {proof.map(({ reading, typed, good }, index) => (
              <li
                key={reading}
                ref={index === shown ? now : null}
                class={`proof-row proof-${index >= shown ? 'due' : good ? 'normal' : 'wrong'}`}
                aria-current={index === shown ? 'step' : undefined}
              >
                <span class="proof-name">{asShown(nameOf(reading))}</span>
                <span class="proof-value">{index < shown && <Figure text={typed} size="row" />}</span>
                <span class="proof-word">
                  {index < shown ? (good ? 'good' : 'not good') : index === shown ? 'now' : 'to read'}
                </span>
              </li>
            ))}
          </ol>
        )}
      </StepBody>
      <DrillDesk run={run} open={false}>
        {!done && (
          <MainAction
            key={shown}
            hint={`${shown + 1} of ${proof.length}`}
            onAct={() => (run.place.value = { ...place, shown: shown + 1 })}
          >
            {`Read: ${nameOf(proof[shown]?.reading ?? '')}`}
          </MainAction>
        )}
        {done && right && (
          <MainAction onAct={() => app.go({ screen: 'debrief', code: run.code }, 'replace')}>
            What each check was worth
          </MainAction>
        )}
        {done && !right && <MainAction onAct={() => run.go({ at: 'board' })}>Go on measuring</MainAction>}
      </DrillDesk>
    </>
  );
}
