import type { JSX } from 'preact';
import { useId } from 'preact/hooks';

interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly choices: readonly { readonly value: T; readonly text: string; readonly means?: string }[];
  readonly value: T;
  readonly onChoose: (value: T) => void;
}

/** One of a few: all of them in sight. */
export function Choice<T extends string>({ label, choices, value, onChoose }: ChoiceProps<T>): JSX.Element {
  const name = useId();
  return (
    <fieldset class="choice">
      <legend>{label}</legend>
      {choices.map((choice) => (
        <label key={choice.value}>
          <input
            type="radio"
            name={name}
            checked={choice.value === value}
            onChange={() => onChoose(choice.value)}
          />
          <span>
            {choice.text}
            {choice.means !== undefined && <small>{choice.means}</small>}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
