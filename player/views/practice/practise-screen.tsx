import type { JSX } from 'preact';
import type { App } from '../../models/app.ts';
import { createPractise, type Practise } from '../../models/practice/practise.ts';
import { Action } from '../../parts/action.tsx';
import { BlankState } from '../../parts/blank-state.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Ledger } from '../../parts/ledger.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useKeys } from '../../parts/use-keys.ts';
import { Shell } from '../shell/shell.tsx';
import { useModel } from '../use-model.ts';
import { FamilyTable } from './family-table.tsx';
import { TrainerDesk } from './trainer-desk.tsx';
import { UnfinishedList } from './unfinished-list.tsx';
import '../../styles/practice.css';

/** Choosing a board to practise on, and what a trainer hands out and takes in. */
export function PractiseScreen({ app }: { readonly app: App }): JSX.Element {
  const practise = useModel(() => createPractise(app.ports));
  const trees = practise.trees.value;
  const start = async () => {
    const code = await practise.start();
    if (code !== null) app.go({ screen: 'drill', code });
  };
  useKeys({ Enter: () => void start() });
  return (
    <Shell app={app} title="Practise">
      <main class="page practise">
        <div>
          <h1>Practise</h1>
          <p class="practise-lead">
            A simulated board hides a fault. Measure what you like, name the fault, prove it; then see what
            each check was worth.
          </p>
        </div>
        <UnfinishedList practise={practise} />
        {trees.state === 'loading' && <BlankState title="Fetching the trees" />}
        {trees.state === 'failed' && (
          <BlankState title="The trees could not be fetched" trouble>
            <p>{trees.why}. Practice needs them from the server; drills begun here are kept.</p>
            <Action onAct={() => void practise.load()}>Try again</Action>
          </BlankState>
        )}
        {trees.state === 'ready' && trees.value.length === 0 && (
          <BlankState title="There are no trees yet">
            <p>Add one to the folder of trees, then build again.</p>
          </BlankState>
        )}
        {trees.state === 'ready' && trees.value.length > 0 && (
          <>
            <BoardForm practise={practise} onStart={() => void start()} />
            <CodeForm app={app} practise={practise} />
          </>
        )}
        <FamilyTable practise={practise} />
        {trees.state === 'ready' && trees.value.length > 0 && (
          <Ledger title="For a trainer" open={false}>
            <TrainerDesk app={app} trees={trees.value} />
          </Ledger>
        )}
        <a class="action action-quiet back-link" href="#/">
          Back to the bench
        </a>
      </main>
    </Shell>
  );
}

interface BoardFormProps {
  readonly practise: Practise;
  readonly onStart: () => void;
}

/** Stands for a surprise: an id is never empty. */
const surprise = '';

function BoardForm({ practise, onStart }: BoardFormProps): JSX.Element | null {
  const { trees, tree, manner, unlisted, refused } = practise;
  if (trees.value.state !== 'ready') return null;
  return (
    <form
      class="sheet-form practise-form"
      onSubmit={(event) => {
        event.preventDefault();
        onStart();
      }}
    >
      <Choice
        label="Which board?"
        value={tree.value ?? surprise}
        onChoose={(id) => (tree.value = id === surprise ? null : id)}
        choices={[
          { value: surprise, text: 'Surprise me', means: 'any tree' },
          ...trees.value.value.map(({ id, title, symptom }) => ({ value: id, text: title, means: symptom })),
        ]}
      />
      <Choice
        label="Who says what comes next?"
        value={manner.value}
        onChoose={(chosen: 'free' | 'guided') => (manner.value = chosen)}
        choices={[
          { value: 'free', text: 'You', means: 'any check, in any order' },
          { value: 'guided', text: 'The tree', means: 'its next check stands in front; others stay open' },
        ]}
      />
      <Choice
        label="What may it have?"
        value={unlisted.value ? 'anything' : 'listed'}
        onChoose={(chosen: 'listed' | 'anything') => (unlisted.value = chosen === 'anything')}
        choices={[
          { value: 'listed', text: 'A fault of its tree' },
          { value: 'anything', text: 'Now and then one that no tree lists', means: 'as on a real bench' },
        ]}
      />
      <p role="alert" class="said">
        {refused.value !== '' && (
          <>
            <strong class="refused-mark">Not begun.</strong> {refused.value}
            {refused.value.endsWith('?') ? '' : '.'}
          </>
        )}
      </p>
      <Action rank="main" keys="Enter" submit>
        Lay a board out
      </Action>
    </form>
  );
}

function CodeForm({ app, practise }: { readonly app: App; readonly practise: Practise }): JSX.Element {
  const { typed } = practise;
  return (
    <form
      class="code-form"
      onSubmit={(event) => {
        event.preventDefault();
        const code = practise.openTyped();
        if (code !== null) app.go({ screen: 'drill', code });
      }}
    >
      <TextField
        label="A trainer gave me a code"
        hint="The same code lays out the same board for everybody"
        value={typed.value}
        onType={(text) => (typed.value = text)}
      />
      <Action submit disabled={typed.value.trim() === ''}>
        Open it
      </Action>
    </form>
  );
}
