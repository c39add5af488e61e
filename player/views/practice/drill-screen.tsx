import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Drill } from '../../../engine/practice/drill.ts';
import type { App } from '../../models/app.ts';
import { minutesText } from '../../models/minutes-text.ts';
import { createDrillRun, type DrillPlace, type DrillRun } from '../../models/practice/drill-run.ts';
import { BlankState } from '../../parts/blank-state.tsx';
import { Shell } from '../shell/shell.tsx';
import { useModel } from '../use-model.ts';
import { AnswerStep } from './answer-step.tsx';
import { BoardStep } from './board-step.tsx';
import { CheckStep } from './check-step.tsx';
import { DrillBeside } from './drill-beside.tsx';
import { DrillSheets } from './drill-sheets.tsx';
import type { DrillStepProps } from './drill-step-props.ts';
import { NameStep } from './name-step.tsx';
import { NamedStep } from './named-step.tsx';
import { ProofStep } from './proof-step.tsx';
import '../../styles/practice.css';

interface DrillScreenProps {
  readonly app: App;
  readonly code: string;
}

/** A simulated board on the bench. */
export function DrillScreen({ app, code }: DrillScreenProps): JSX.Element {
  const run = useModel(() => createDrillRun(app.ports, code));
  const drill = run.drill.value;
  const over = drill.state === 'ready' && drill.value.state !== 'running' && run.place.value.at !== 'proof';
  useEffect(() => {
    if (over) app.go({ screen: 'debrief', code }, 'replace');
  }, [over]);
  if (drill.state === 'ready' && !over) return <Running app={app} run={run} drill={drill.value} />;
  return (
    <Shell app={app} title="Practise">
      <main class="page">
        {drill.state !== 'failed' ? (
          <BlankState title="Laying the board out" />
        ) : (
          <BlankState title="This board cannot be laid out" trouble>
            <p>{drill.why}.</p>
            <button type="button" class="action" onClick={() => void run.load()}>
              Try again
            </button>
            <a class="action action-main" href="#/practise">
              Choose another
            </a>
          </BlankState>
        )}
      </main>
    </Shell>
  );
}

const keys: readonly (readonly [string, string])[] = [
  ['Enter', 'The main action: take the check, measure, go on'],
  ['1 … 9', 'Say which band it is, while the field is empty'],
  ['Alt B', 'Back to the board'],
  ['Alt F', 'Name the fault'],
  ['Alt H', 'A hint: it says what it costs first'],
  ['Alt G', 'Give up'],
];

interface RunningProps {
  readonly app: App;
  readonly run: DrillRun;
  readonly drill: Drill;
}

function Running({ app, run, drill }: RunningProps): JSX.Element {
  const place = run.place.value;
  return (
    <Shell app={app} title="Practise" head={<DrillHead drill={drill} />} keys={keys}>
      <div class="bench">
        <main class={`walk${drill.board?.pictures.length ? ' walk-pictured' : ''}`}>
          {!run.kept.value && (
            <p class="notice notice-refused" role="alert">
              This browser keeps nothing for the page: leave it open until you are done.
            </p>
          )}
          <Step
            key={JSON.stringify([place.at, 'reading' in place && place.reading])}
            app={app}
            run={run}
            drill={drill}
            place={place}
          />
        </main>
        <DrillBeside run={run} drill={drill} />
      </div>
      <DrillSheets run={run} />
    </Shell>
  );
}

type Steps = {
  readonly [At in DrillPlace['at']]: (props: DrillStepProps<At>) => JSX.Element | null;
};

const steps: Steps = {
  board: BoardStep,
  check: CheckStep,
  answer: AnswerStep,
  names: NameStep,
  remedy: NamedStep,
  proof: ProofStep,
};

function Step(props: DrillStepProps<DrillPlace['at']>): JSX.Element | null {
  const View = steps[props.place.at] as (props: DrillStepProps<DrillPlace['at']>) => JSX.Element | null;
  return <View {...props} />;
}

/** Which tree's board this is, and the bench minutes spent on it. */
function DrillHead({ drill }: { readonly drill: Drill }): JSX.Element {
  return (
    <>
      <span class="head-board">{drill.tree.title}</span>
      <span class="head-clock" title="Minutes that this work takes at a bench">
        <span class="unseen">Spent at the bench: </span>
        {minutesText(drill.minutes)}
      </span>
    </>
  );
}
