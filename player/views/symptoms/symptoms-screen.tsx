import type { JSX } from 'preact';
import type { App } from '../../models/app.ts';
import { placeOfRoute } from '../../models/route.ts';
import { createSymptomList, type SymptomList } from '../../models/symptom-list.ts';
import { BlankState } from '../../parts/blank-state.tsx';
import { Shell } from '../shell/shell.tsx';
import { useModel } from '../use-model.ts';
import { SymptomField } from './symptom-field.tsx';

/** What the board does, in an owner's words. */
export function SymptomsScreen({ app }: { readonly app: App }): JSX.Element {
  const list = useModel(() => createSymptomList(app.ports.trees));
  const take = () => {
    const [only, ...others] = list.fitting.value;
    if (only !== undefined && others.length === 0) app.go({ screen: 'opening', tree: only.id });
  };
  return (
    <Shell app={app} title="What does the board do?">
      <main class="page">
        <h1>What does the board do?</h1>
        <SymptomField list={list} onTake={take} />
        <Symptoms list={list} online={app.ports.browser.online()} />
        <a class="action action-quiet back-link" href="#/">
          Back to the bench
        </a>
      </main>
    </Shell>
  );
}

function Symptoms({ list, online }: { readonly list: SymptomList; readonly online: boolean }): JSX.Element {
  const all = list.all.value;
  if (all.state === 'loading') return <BlankState title="Fetching the symptoms" />;
  if (all.state === 'failed') {
    return (
      <BlankState title={online ? 'The symptoms could not be fetched' : 'This device is offline'} trouble>
        <p>
          {online ? `${all.why}. ` : 'New jobs need the trees from the server. '}
          Jobs on the bench go on: each keeps its own tree.
        </p>
        <button type="button" class="action" onClick={() => void list.load()}>
          Try again
        </button>
      </BlankState>
    );
  }
  if (list.fitting.value.length === 0) {
    return (
      <BlankState
        title={all.value.length === 0 ? 'There are no trees yet' : 'No symptom here has these words'}
      >
        <p>
          {all.value.length === 0
            ? 'Add one to the folder of trees, then build again.'
            : 'Fewer words find more.'}
        </p>
      </BlankState>
    );
  }
  return (
    <ul class="cards" aria-label="Symptoms">
      {list.fitting.value.map(({ id, symptom, title, boards, sections, faults }) => (
        <li key={id} class="card">
          <a class="card-link" href={`#${placeOfRoute({ screen: 'opening', tree: id })}`}>
            {symptom}
          </a>
          <p class="card-finding">{title}</p>
          <p class="card-counts">
            <span>{boards.join(', ')}</span>
            <span class="dot-before">
              {sections} steps, {faults} faults
            </span>
          </p>
        </li>
      ))}
    </ul>
  );
}
