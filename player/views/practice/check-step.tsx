import type { JSX } from 'preact';
import type { Hazard } from '../../../engine/model/prose.ts';
import type { Drill, DrillCheck } from '../../../engine/practice/drill.ts';
import { expectationOf } from '../../../engine/run/index.ts';
import { becauseWords } from '../../models/because-words.ts';
import { conditionName } from '../../models/condition-name.ts';
import { minutesText } from '../../models/minutes-text.ts';
import { powerInDrill } from '../../models/practice/power-in-drill.ts';
import { sessionOfDrill } from '../../models/practice/session-of-drill.ts';
import { Action } from '../../parts/action.tsx';
import { ConditionStrip } from '../../parts/condition-strip.tsx';
import { ExpectedPlate } from '../../parts/expected-plate.tsx';
import { Prose } from '../../parts/prose.tsx';
import { MainAction } from '../job/main-action.tsx';
import { StepBody } from '../job/step.tsx';
import { useResolve } from '../job/use-resolve.ts';
import { WhereToTouch } from '../job/where-to-touch.tsx';
import { BandChoice } from './band-choice.tsx';
import { DrillDesk } from './drill-desk.tsx';
import type { DrillStepProps } from './drill-step-props.ts';
import { StandsBefore } from './stands-before.tsx';
import { StepTitle } from './step-title.tsx';

/** One check before it is taken: what it takes, where to touch, what stands before it. */
export function CheckStep({ run, drill, place }: DrillStepProps<'check'>): JSX.Element | null {
  const check = run.checks.value.find(({ reading }) => reading.id === place.reading);
  const session = sessionOfDrill(drill);
  const resolve = useResolve(session);
  if (check === undefined) return null;
  const { reading } = check;
  const section = drill.tree.sections.find(({ id }) => id === check.section);
  const expected = expectationOf(session, reading);
  const nameOf = (id: string) => (id === 'twin' ? 'what a known-good board shows' : id);
  return (
    <>
      <StepBody>
        <StepTitle>{reading.is}</StepTitle>
        <ConditionStrip
          power={reading.power}
          changed={reading.power !== null && reading.power !== powerInDrill(drill)}
          conditions={Object.entries(reading.when).map(([id, is]) => ({
            name: conditionName(id),
            is,
            changed: check.changes[id] !== undefined,
          }))}
          tools={reading.with}
          setUp={reading.set}
        />
        <StandsBefore
          warnings={check.warnings}
          hazards={[...headHazards(drill), ...(section?.hazards ?? [])]}
          resolve={resolve}
        />
        <WhereToTouch session={session} reading={reading} />
        {section !== undefined && <Prose blocks={section.blocks} resolve={resolve} />}
        <BandChoice
          title="Say first what it will show, if you like"
          reading={reading}
          chosen={run.saying.value}
          onChoose={(band) => (run.saying.value = run.saying.value === band ? null : band)}
        />
      </StepBody>
      <TakeDesk
        check={check}
        onBack={() => run.go({ at: 'board' })}
        run={run}
        expected={
          reading.normal !== 'any' && (
            <ExpectedPlate
              text={expected.text}
              because={becauseWords(expected.because)}
              missing={(expected.resolved?.missing ?? []).map(nameOf)}
              size="large"
              contradiction={expected.resolved?.contradiction ?? null}
            />
          )
        }
      />
    </>
  );
}

/** What stands above the whole tree, until something was measured with it in mind. */
const headHazards = ({ tree, events }: Drill): readonly Hazard[] =>
  events.some((event) => event.kind === 'measured' && event.heeded) ? [] : tree.hazards;

interface TakeDeskProps extends Pick<DrillStepProps<'check'>, 'run'> {
  readonly check: DrillCheck;
  readonly expected: JSX.Element | false;
  readonly onBack: () => void;
}

/** The way on depends on what stands before it: words are read, work is done first. Either can be passed over, and that counts. */
function TakeDesk({ run, check, expected, onBack }: TakeDeskProps): JSX.Element {
  const { reading, warnings, minutes, wait } = check;
  const onlyWords = warnings.every(({ kind }) => kind === 'hazard');
  const costs = `It takes ${minutesText(minutes)}${wait > 0 ? `, and ${minutesText(wait)} of waiting` : ''}.`;
  const take = (heeded: boolean) => run.measure(reading.id, heeded);
  return (
    <DrillDesk
      run={run}
      onBack={onBack}
      foot={
        warnings.length > 0 && (
          <Action rank="quiet" onAct={() => take(false)}>
            Measure all the same
          </Action>
        )
      }
    >
      {expected}
      {onlyWords ? (
        <MainAction hint={costs} onAct={() => take(true)}>
          {warnings.length > 0 ? 'I have read this: measure' : 'Measure'}
        </MainAction>
      ) : (
        <MainAction hint="Measured all the same, it counts as a warning passed over." onAct={onBack}>
          Go back and do that first
        </MainAction>
      )}
    </DrillDesk>
  );
}
