import type { JSX } from 'preact';
import { mends } from '../../../engine/model/mends.ts';
import { unlisted } from '../../../engine/practice/drill.ts';
import { minutesText } from '../../models/minutes-text.ts';
import { sessionOfDrill } from '../../models/practice/session-of-drill.ts';
import { HazardPlate } from '../../parts/hazard-plate.tsx';
import { Prose } from '../../parts/prose.tsx';
import { MainAction } from '../job/main-action.tsx';
import { StepBody } from '../job/step.tsx';
import { useResolve } from '../job/use-resolve.ts';
import { DrillDesk } from './drill-desk.tsx';
import type { DrillStepProps } from './drill-step-props.ts';
import { StepTitle } from './step-title.tsx';

/** The fault that was named, with the work that mends it. */
export function NamedStep({ run, drill, place }: DrillStepProps<'remedy'>): JSX.Element {
  const resolve = useResolve(sessionOfDrill(drill));
  const back = () => run.go({ at: 'names' });
  const fault = drill.tree.faults.find(({ id }) => id === place.fault);
  const section = drill.tree.sections.find((one) => mends(one, place.fault));
  const remedy = section?.remedies.find((one) => one.fault === place.fault);
  if (place.fault === unlisted || fault === undefined) {
    return (
      <>
        <StepBody>
          <StepTitle>None of the faults that this tree lists</StepTitle>
          <p>Some boards have what no tree foresaw. Say so when the readings fit nothing in it.</p>
        </StepBody>
        <DrillDesk run={run} onBack={back} open={false}>
          <MainAction hint="If that is wrong, you go on measuring." onAct={() => run.mend(unlisted)}>
            That is what I say
          </MainAction>
        </DrillDesk>
      </>
    );
  }
  const takes = [
    ...(fault.minutes === null ? [] : [`takes ${minutesText(fault.minutes)}`]),
    ...(fault.tools.length === 0 ? [] : [`with ${fault.tools.join(', ')}`]),
    ...(fault.parts.length === 0 ? [] : [`needs ${fault.parts.join(', ')}`]),
  ];
  return (
    <>
      <StepBody>
        <StepTitle>{fault.is}</StepTitle>
        {takes.length > 0 && <p class="hint">The remedy {takes.join(', ')}.</p>}
        {[...(section?.hazards ?? []), ...(remedy?.hazards ?? [])].map((hazard) => (
          <HazardPlate key={hazard.digest} hazard={hazard} resolve={resolve} />
        ))}
        {section !== undefined && <Prose blocks={section.blocks} resolve={resolve} />}
        {remedy !== undefined && <Prose blocks={remedy.blocks} resolve={resolve} />}
      </StepBody>
      <DrillDesk run={run} onBack={back} open={false}>
        <MainAction
          hint="The proof follows, reading by reading. On another cause it fails."
          onAct={() => run.mend(fault.id)}
        >
          Mend that, then prove it
        </MainAction>
      </DrillDesk>
    </>
  );
}
