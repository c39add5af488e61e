import type { JSX } from 'preact';
import type { Option } from '../../engine/model/reading.ts';
import { KeyHint } from './key-hint.tsx';

interface OptionsFaceProps {
  readonly options: readonly Option[];
  readonly normal: readonly string[] | 'any';
  /** Options that what is typed may mean. */
  readonly chosen: readonly string[];
  /** Whether the digits 1 to 9 choose while the field is empty. */
  readonly digits: boolean;
  readonly onChoose: (name: string) => void;
}

/** The face of a reading that is seen and not measured: what it can be, side by side. */
export function OptionsFace({ options, normal, chosen, digits, onChoose }: OptionsFaceProps): JSX.Element {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset's legend would repeat the reading's name
    <div class="options" role="group" aria-label="What it can be">
      {options.map(({ name, means }, index) => (
        <button
          key={name}
          type="button"
          class={`option${normal !== 'any' && normal.includes(name) ? ' option-normal' : ''}`}
          aria-pressed={chosen.includes(name)}
          onClick={() => onChoose(name)}
        >
          {digits && index < 9 && <KeyHint keys={String(index + 1)} />}
          <span class="option-name">{name}</span>
          {normal !== 'any' && normal.includes(name) && <span class="option-mark">normal</span>}
          {means !== null && <span class="option-means">{means}</span>}
        </button>
      ))}
    </div>
  );
}
