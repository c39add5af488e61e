import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { SymptomList } from '../../models/symptom-list.ts';

interface SymptomFieldProps {
  readonly list: SymptomList;
  /** Enter, with what is left. */
  readonly onTake: () => void;
}

/** Typing narrows the list; Enter takes the last one left. */
export function SymptomField({ list, onTake }: SymptomFieldProps): JSX.Element {
  const field = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => field.current?.focus({ preventScroll: true }), []);
  const left = list.fitting.value.length;
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onTake();
      }}
    >
      <label class="engraved" for="symptom">
        In the owner's words
      </label>
      <div class="field">
        <input
          id="symptom"
          ref={field}
          class="field-input"
          type="text"
          autoComplete="off"
          placeholder="black screen"
          value={list.typed.value}
          onInput={(event) => {
            list.typed.value = event.currentTarget.value;
          }}
        />
      </div>
      <p class="hint" role="status">
        {list.all.value.state === 'ready' && (left === 1 ? 'One fits. Enter takes it' : `${left} fit`)}
      </p>
    </form>
  );
}
