import type { JSX } from 'preact';
import { unlisted } from '../../../engine/practice/drill.ts';
import type { App } from '../../models/app.ts';
import { narrow } from '../../models/narrow.ts';
import { createTrainer, type Trainer } from '../../models/practice/trainer.ts';
import { Action } from '../../parts/action.tsx';
import { Choice } from '../../parts/choice.tsx';
import { TextField } from '../../parts/text-field.tsx';
import type { TreeListing } from '../../ports/trees.ts';
import { useKept } from '../use-kept.ts';
import { ClassTable } from './class-table.tsx';

interface TrainerDeskProps {
  readonly app: App;
  readonly trees: readonly TreeListing[];
}

/** A board with a chosen fault to hand out, and the results of a class. */
export function TrainerDesk({ app, trees }: TrainerDeskProps): JSX.Element {
  const trainer = useKept(() => createTrainer(app.ports));
  const { tree, laidOut } = trainer;
  return (
    <div class="trainer practise-form">
      <section aria-labelledby="hide-a-fault">
        <h2 id="hide-a-fault">Hide a fault</h2>
        <Choice
          label="On which board?"
          value={tree.value ?? ''}
          onChoose={(id) => void trainer.choose(id)}
          choices={trees.map(({ id, title }) => ({ value: id, text: title }))}
        />
        {laidOut.value?.state === 'failed' && (
          <p role="alert">
            <strong class="refused-mark">Not fetched.</strong> {laidOut.value.why}.
          </p>
        )}
        {laidOut.value?.state === 'ready' && <FaultChoice trainer={trainer} />}
      </section>
      <ClassTable app={app} />
    </div>
  );
}

function FaultChoice({ trainer }: { readonly trainer: Trainer }): JSX.Element | null {
  const { laidOut, typed, fault, manner, tools, lacking } = trainer;
  if (laidOut.value?.state !== 'ready') return null;
  const faults = [
    ...laidOut.value.value.tree.faults.map(({ id, is }) => ({ id, is })),
    { id: unlisted, is: 'None that this tree lists' },
  ];
  return (
    <>
      <TextField
        label="Which fault?"
        hint="Typing narrows the list"
        value={typed.value}
        onType={(text) => (typed.value = text)}
      />
      <ul class="check-list fault-choice">
        {narrow(faults, typed.value, ({ is }) => is).map(({ id, is }) => (
          <li key={id}>
            <button
              type="button"
              class="check-row"
              aria-pressed={fault.value === id}
              onClick={() => trainer.hide(id)}
            >
              <span class="check-name">{is}</span>
            </button>
          </li>
        ))}
      </ul>
      <Choice
        label="Who says what comes next?"
        value={manner.value}
        onChoose={(chosen: 'free' | 'guided') => (manner.value = chosen)}
        choices={[
          { value: 'free', text: 'The trainee' },
          { value: 'guided', text: 'The tree' },
        ]}
      />
      <fieldset class="choice choice-many">
        <legend>Without these tools</legend>
        {tools.value.map((tool) => (
          <label key={tool}>
            <input
              type="checkbox"
              checked={lacking.value.includes(tool)}
              onChange={(event) => {
                const others = lacking.value.filter((one) => one !== tool);
                lacking.value = event.currentTarget.checked ? [...others, tool] : others;
              }}
            />
            <span>{tool}</span>
          </label>
        ))}
      </fieldset>
      <SealedBoard trainer={trainer} />
    </>
  );
}

function SealedBoard({ trainer }: { readonly trainer: Trainer }): JSX.Element | null {
  const sealed = trainer.sealed.value;
  if (sealed === null) return null;
  const { code, link } = sealed;
  return (
    <section class="sealed" aria-label="To hand out">
      <p class="engraved">Code, to read out or write on the board</p>
      <p class="sealed-text sealed-code">{code}</p>
      <Action onAct={() => void trainer.copy(code)}>Copy the code</Action>
      <p class="engraved">Link, to send</p>
      <p class="sealed-text">{link}</p>
      <Action onAct={() => void trainer.copy(link)}>Copy the link</Action>
      <p role="status">{trainer.said.value}</p>
      <p class="hint">
        Everybody gets the same board, value by value. Neither code nor link says which fault it hides; the
        debrief does.
      </p>
    </section>
  );
}
