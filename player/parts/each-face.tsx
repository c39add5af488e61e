import type { JSX } from 'preact';
import { Action } from './action.tsx';

interface EachFaceProps {
  readonly members: readonly {
    readonly name: string;
    readonly text: string | null;
    readonly normal: boolean;
  }[];
  /** What pressing one does, for those who see the row: `Press one to change it`. */
  readonly hint: string;
  /** `All moves`, `Rest moves`: everybody who was not told. */
  readonly rest: string;
  readonly onPress: (name: string) => void;
  readonly onRest: () => void;
}

/** The face of many alike: one key for each, in their order, and one for all the others. */
export function EachFace({ members, hint, rest, onPress, onRest }: EachFaceProps): JSX.Element {
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset's legend would repeat the reading's name */}
      <div class="members" role="group" aria-label="One by one">
        {members.map(({ name, text, normal }) => (
          <button
            key={name}
            type="button"
            class={`member${normal ? '' : ' member-off'}`}
            onClick={() => onPress(name)}
          >
            <span class="member-name">{name}</span>
            <span class="member-text">{text ?? '–'}</span>
          </button>
        ))}
      </div>
      <p class="tap-along">
        <Action keys="Alt A" onAct={onRest}>
          {rest}
        </Action>
        <span class="hint roomy">{hint}</span>
      </p>
    </>
  );
}
