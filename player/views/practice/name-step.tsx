import type { JSX } from 'preact';
import type { Fault } from '../../../engine/model/fault.ts';
import { unlisted } from '../../../engine/practice/drill.ts';
import { minutesText } from '../../models/minutes-text.ts';
import { narrow } from '../../models/narrow.ts';
import { asShown } from '../../parts/as-shown.ts';
import { StepBody } from '../job/step.tsx';
import { DrillDesk } from './drill-desk.tsx';
import type { DrillStepProps } from './drill-step-props.ts';
import { NarrowField } from './narrow-field.tsx';
import { StepTitle } from './step-title.tsx';

/** The faults of the tree, to name one of them. */
export function NameStep({ run, drill }: DrillStepProps<'names'>): JSX.Element {
  const { typed } = run;
  const tried = drill.events.flatMap((event) => (event.kind === 'named' ? [event.fault] : []));
  const names = [
    ...drill.tree.faults.map((fault) => ({ id: fault.id, is: fault.is, costs: costOf(fault) })),
    { id: unlisted, is: 'None of these', costs: 'it has what this tree does not list' },
  ];
  const left = narrow(names, typed.value, ({ is, id }) => `${is} ${id}`);
  const [only] = left.length === 1 ? left : [];
  const pick = (fault: string) => run.go({ at: 'remedy', fault });
  return (
    <>
      <StepBody>
        <StepTitle hasField>What is wrong with this board?</StepTitle>
        <ul class="check-list">
          {left.map(({ id, is, costs }) => (
            <li key={id}>
              <button type="button" class="check-row" onClick={() => pick(id)}>
                <span class="check-name">{asShown(is)}</span>
                <span class="check-more">{tried.includes(id) ? 'tried: that was not the cause' : costs}</span>
              </button>
            </li>
          ))}
        </ul>
      </StepBody>
      <DrillDesk run={run} onBack={() => run.go({ at: 'board' })} open={false}>
        <NarrowField
          label="Name the fault"
          typed={typed.value}
          left={left.length}
          takes={only?.is ?? null}
          onType={(text) => (typed.value = text)}
          onTake={() => only !== undefined && pick(only.id)}
        />
      </DrillDesk>
    </>
  );
}

const costOf = ({ minutes }: Fault): string =>
  minutes === null ? 'time of the remedy not given' : `remedy: ${minutesText(minutes)}`;
