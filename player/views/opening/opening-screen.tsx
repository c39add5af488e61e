import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import type { App } from '../../models/app.ts';
import { createOpening, type Opening } from '../../models/opening.ts';
import { Action } from '../../parts/action.tsx';
import { BlankState } from '../../parts/blank-state.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { Shell } from '../shell/shell.tsx';
import { useModel } from '../use-model.ts';
import { SheetChoice } from './sheet-choice.tsx';

interface OpeningScreenProps {
  readonly app: App;
  readonly tree: string;
}

/** A new job: which board lies on the bench. */
export function OpeningScreen({ app, tree }: OpeningScreenProps): JSX.Element {
  const opening = useModel(() => createOpening(app.ports, tree));
  const loaded = opening.tree.value;
  const open = async () => {
    const id = await opening.open();
    if (id !== null) app.go({ screen: 'job', id }, 'replace');
  };
  return (
    <Shell app={app} title="A new job">
      <main class="page">
        {loaded.state === 'loading' && <BlankState title="Fetching the tree" />}
        {loaded.state === 'failed' && (
          <BlankState title="The tree could not be fetched" trouble>
            <p>{loaded.why}. Jobs on the bench go on: each keeps its own tree.</p>
            <button type="button" class="action" onClick={() => void opening.load()}>
              Try again
            </button>
          </BlankState>
        )}
        {loaded.state === 'ready' && (
          <OpeningForm opening={opening} tree={loaded.value} onOpen={() => void open()} />
        )}
        <a class="action action-quiet back-link" href="#/symptoms">
          Back to the symptoms
        </a>
      </main>
    </Shell>
  );
}

interface OpeningFormProps {
  readonly opening: Opening;
  readonly tree: CompiledTree;
  readonly onOpen: () => void;
}

function OpeningForm({ opening, tree, onOpen }: OpeningFormProps): JSX.Element {
  const { board, owner, story, ready, refused } = opening;
  const form = useRef<HTMLFormElement>(null);
  useLayoutEffect(() => form.current?.querySelector<HTMLElement>('[data-first]')?.focus(), []);
  return (
    <form
      ref={form}
      class="sheet-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (ready.value) onOpen();
      }}
    >
      <h1>{tree.symptom}</h1>
      <p class="hint">
        {tree.title}, for {tree.boards.join(', ')}
      </p>
      <TextField
        label="Which board is it?"
        hint="As you would label the box: it names the job on the bench"
        value={board.value}
        onType={(text) => (board.value = text)}
        first
        required
      />
      <SheetChoice opening={opening} />
      <TextField label="Whose is it?" value={owner.value} onType={(text) => (owner.value = text)} />
      <TextField
        label="What does the owner say?"
        hint="What was done last, since when, always or now and then"
        value={story.value}
        onType={(text) => (story.value = text)}
        tall
      />
      {refused.value !== '' && (
        <p role="alert">
          <strong class="refused-mark">Not opened.</strong> {refused.value}.
        </p>
      )}
      <Action rank="main" keys="Enter" submit disabled={!ready.value}>
        Put it on the bench
      </Action>
    </form>
  );
}
