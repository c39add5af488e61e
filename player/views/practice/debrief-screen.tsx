import type { JSX } from 'preact';
import type { App } from '../../models/app.ts';
import { minutesText } from '../../models/minutes-text.ts';
import { createDebriefPage, type DebriefPage } from '../../models/practice/debrief-page.ts';
import type { DebriefShown } from '../../models/practice/debrief-shown.ts';
import { Action } from '../../parts/action.tsx';
import { BlankState } from '../../parts/blank-state.tsx';
import { NarrowingPicture } from '../../parts/narrowing-picture.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { Shell } from '../shell/shell.tsx';
import { useModel } from '../use-model.ts';
import { MarkKey } from './mark-key.tsx';
import { StepTable } from './step-table.tsx';
import '../../styles/practice.css';

interface DebriefScreenProps {
  readonly app: App;
  readonly code: string;
}

/** What each check of a drill was worth. */
export function DebriefScreen({ app, code }: DebriefScreenProps): JSX.Element {
  const page = useModel(() => createDebriefPage(app.ports, code));
  const debrief = page.debrief.value;
  return (
    <Shell app={app} title="Debrief">
      <main class="page debrief">
        {debrief.state === 'loading' && <BlankState title="Working out what each check was worth" />}
        {debrief.state === 'failed' && (
          <BlankState title="There is no debrief" trouble>
            <p>{debrief.why}.</p>
            <a class="action" href="#/practise">
              Choose a board
            </a>
          </BlankState>
        )}
        {debrief.state === 'ready' && (
          <Debrief
            app={app}
            page={page}
            debrief={debrief.value}
            onAgain={() => {
              page.again();
              app.go({ screen: 'drill', code });
            }}
          />
        )}
      </main>
    </Shell>
  );
}

interface DebriefProps {
  readonly app: App;
  readonly page: DebriefPage;
  readonly debrief: DebriefShown;
  readonly onAgain: () => void;
}

function Debrief({ app, page, debrief, onAgain }: DebriefProps): JSX.Element {
  const { hidden, found, minutes, title, moments, enough, orders, lines, steps, says } = debrief;
  const another = () => app.go({ screen: 'practise' });
  return (
    <>
      <div>
        <p class="hint">{title}</p>
        <h1>{found ? `Found after ${minutesText(minutes)}` : `Given up after ${minutesText(minutes)}`}</h1>
        <p class="debrief-verdict">
          The board had: <strong>{hidden}</strong>
        </p>
      </div>
      <section aria-labelledby="suspects-over-time">
        <h2 id="suspects-over-time">How the suspects shrank</h2>
        <NarrowingPicture moments={moments} marks={steps} enough={enough} orders={orders} says={says} />
        <MarkKey marks={steps} />
      </section>
      <ul class="debrief-lines">
        {lines.map(({ text, tone }) => (
          <li key={text} class={`line-${tone}`}>
            {text}
          </li>
        ))}
      </ul>
      <section aria-labelledby="each-check">
        <h2 id="each-check">What each was worth</h2>
        <StepTable steps={steps} />
      </section>
      <form
        class="debrief-tools"
        onSubmit={(event) => {
          event.preventDefault();
          page.saveResult();
        }}
      >
        <TextField
          label="Your name, for the result"
          value={page.name.value}
          onType={(text) => (page.name.value = text)}
        />
        <Action submit>Save the result</Action>
        <Action rank="quiet" onAct={page.print}>
          Print
        </Action>
      </form>
      <div class="debrief-tools">
        <Action rank="main" onAct={another}>
          Another board
        </Action>
        <Action onAct={onAgain}>The same board again</Action>
      </div>
    </>
  );
}
