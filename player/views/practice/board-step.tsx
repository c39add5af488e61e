import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { type BoardPlace, boardPlaces } from '../../models/practice/board-places.ts';
import { checkGroups } from '../../models/practice/check-groups.ts';
import { Action } from '../../parts/action.tsx';
import { StepBody } from '../job/step.tsx';
import { CheckList } from './check-list.tsx';
import { DrillDesk } from './drill-desk.tsx';
import type { DrillStepProps } from './drill-step-props.ts';
import { NarrowField } from './narrow-field.tsx';
import { NextCheck, TreeEnds } from './next-check.tsx';
import { PointMap } from './point-map.tsx';
import { StepTitle } from './step-title.tsx';

/** The board lies there: its pictures, and everything that can be measured. */
export function BoardStep({ run, drill }: DrillStepProps<'board'>): JSX.Element {
  const { typed, next } = run;
  const checks = run.checks.value;
  const spot = useSignal<BoardPlace | null>(null);
  const here = checks.filter(
    ({ reading }) => spot.value === null || spot.value.readings.includes(reading.id),
  );
  const groups = checkGroups(here, drill.board, typed.value);
  const left = groups.flatMap((group) => group.checks);
  const asked = checks.find(({ reading }) => reading.id === next.value) ?? null;
  const led = run.led.value;
  const isOpen = typed.value === '' && spot.value === null;
  const offered = isOpen ? asked : left.length === 1 ? left[0] : null;
  const pick = (reading: string) => run.go({ at: 'check', reading });
  const takes = isOpen && led !== null ? `Name it: ${led.is}` : (offered?.reading.is ?? null);
  const take = () => {
    if (isOpen && led !== null) run.go({ at: 'remedy', fault: led.id });
    else if (offered != null) pick(offered.reading.id);
  };
  const pickPlace = (place: BoardPlace) => {
    const [only, ...others] = place.readings;
    if (only !== undefined && others.length === 0) pick(only);
    else spot.value = place;
  };
  const pictures = drill.board === null ? [] : boardPlaces(drill.board, checks);
  return (
    <>
      <StepBody>
        <StepTitle hasField>
          {drill.events.length === 0 ? drill.tree.symptom : 'What do you check next?'}
        </StepTitle>
        {isOpen && asked !== null && <NextCheck drill={drill} check={asked} />}
        {isOpen && asked === null && drill.plan.manner === 'guided' && <TreeEnds led={led} />}
        {pictures.length > 0 && (
          <section class={`pictures${isOpen ? '' : ' pictures-last'}`} aria-label="Points to pick">
            {pictures.map(({ picture, places }) => (
              <PointMap
                key={picture.id}
                picture={picture}
                places={places}
                chosen={spot.value}
                onPick={pickPlace}
              />
            ))}
          </section>
        )}
        {spot.value !== null && (
          <p class="spot" role="status">
            <span>
              At <strong>{spot.value.is}</strong>
            </span>
            <Action rank="quiet" onAct={() => (spot.value = null)}>
              Show everything
            </Action>
          </p>
        )}
        <CheckList groups={groups} onPick={pick} />
      </StepBody>
      <DrillDesk run={run}>
        <NarrowField
          label={asked === null ? 'What do you check?' : 'What the tree asks, or something else'}
          typed={typed.value}
          left={left.length}
          takes={takes}
          onType={(text) => (typed.value = text)}
          onTake={take}
        />
      </DrillDesk>
    </>
  );
}
