import type { JSX } from 'preact';
import type { Observation } from '../../../engine/model/observation.ts';
import type { Reading } from '../../../engine/model/reading.ts';
import { expectationOf, type Session } from '../../../engine/run/index.ts';
import { gaugeOf, pointersOf } from '../../models/gauge-of.ts';
import { minutesText } from '../../models/minutes-text.ts';
import { answerOf } from '../../models/practice/answer-of.ts';
import { judgementWords } from '../../models/practice/judgement-words.ts';
import { meaningOf } from '../../models/practice/meaning-of.ts';
import { sessionOfDrill } from '../../models/practice/session-of-drill.ts';
import { Action } from '../../parts/action.tsx';
import { Figure } from '../../parts/figure.tsx';
import { Gauge } from '../../parts/gauge.tsx';
import { MainAction } from '../job/main-action.tsx';
import { StepBody } from '../job/step.tsx';
import { BandChoice } from './band-choice.tsx';
import { DrillDesk } from './drill-desk.tsx';
import type { DrillStepProps } from './drill-step-props.ts';
import { StepTitle } from './step-title.tsx';

/** What the instrument shows, and what the trainee takes it for. */
export function AnswerStep({ run, drill, place }: DrillStepProps<'answer'>): JSX.Element | null {
  const session = sessionOfDrill(drill);
  const answer = answerOf(drill, session, place.reading);
  if (answer === null) return null;
  const { reading, typed, twin, observation, minutes, harm } = answer;
  const plain = observation === null || observation.bands.join(' or ') === typed;
  const judged = plain || place.said !== null;
  return (
    <>
      <StepBody>
        <StepTitle>{reading.is}</StepTitle>
        <div class="instrument-face">
          <p class="engraved">{reading.with.length > 0 ? reading.with.join(', ') : 'You see'}</p>
          <p role="status">
            <Figure text={typed} size="hero" />
          </p>
          {twin !== null && (
            <p class="twin-line">
              <span class="engraved">A known-good board</span> <Figure text={twin} size="large" />
            </p>
          )}
        </div>
        {harm.map((text) => (
          <p key={text} class="finding" role="alert">
            That did harm: {text}
          </p>
        ))}
        {judged ? (
          <Judged session={session} reading={reading} observation={observation} said={place.said} />
        ) : (
          <BandChoice
            title="Which band is that?"
            reading={reading}
            chosen={null}
            onChoose={(band) => (run.place.value = { ...place, said: band })}
          />
        )}
      </StepBody>
      <DrillDesk
        run={run}
        foot={
          twin === null &&
          reading.measure.kind !== 'options' && (
            <Action rank="quiet" keys="Alt T" onAct={() => run.readTwin(reading.id)}>
              {`Known-good board, ${minutesText(reading.minutes)}`}
            </Action>
          )
        }
      >
        <MainAction
          hint={`${minutesText(minutes)} spent.${judged ? '' : ' Judge it first, or go on and see the band in the list.'}`}
          onAct={() => run.go({ at: 'board' })}
        >
          Go on
        </MainAction>
      </DrillDesk>
    </>
  );
}

interface JudgedProps {
  readonly session: Session;
  readonly reading: Reading;
  readonly observation: Observation | null;
  readonly said: string | null;
}

/** The band it is, beside what the trainee said. */
function Judged({ session, reading, observation, said }: JudgedProps): JSX.Element | null {
  if (observation === null) return null;
  const { resolved, normal } = expectationOf(session, reading);
  const gauge = resolved === null ? null : gaugeOf(resolved, normal);
  const means = meaningOf(reading, observation);
  return (
    <>
      {gauge !== null && (
        <Gauge {...gauge} pointers={pointersOf(observation, gauge.face)} read={observation.bands} />
      )}
      <p class="judgement" role="status">
        {judgementWords(session, reading, observation, said)}
      </p>
      {means !== null && <p>{means}</p>}
    </>
  );
}
