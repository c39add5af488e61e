import type { JSX, Ref } from 'preact';

interface ReadingFieldProps {
  readonly id: string;
  readonly label: string;
  readonly typed: string;
  /** The unit a bare number takes; null for words and codes. */
  readonly unit: string | null;
  readonly refused: boolean;
  readonly describedBy: string;
  readonly onType: (typed: string) => void;
  readonly innerRef?: Ref<HTMLInputElement>;
  /** Takes the focus when its sheet opens. */
  readonly first?: boolean;
}

/** The one big field. */
export function ReadingField(props: ReadingFieldProps): JSX.Element {
  const { id, label, typed, unit, refused, describedBy, onType, innerRef, first = false } = props;
  return (
    <div class="field">
      <label class="unseen" for={id}>
        {label}
      </label>
      <input
        id={id}
        ref={innerRef ?? null}
        class="field-input"
        type="text"
        inputMode="text"
        enterKeyHint="go"
        autoComplete="off"
        autoCapitalize="off"
        autoCorrect="off"
        spellcheck={false}
        value={typed}
        aria-invalid={refused}
        aria-describedby={describedBy}
        data-first={first ? '' : undefined}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      {unit !== null && (
        <span class="field-unit" aria-hidden="true">
          {unit}
        </span>
      )}
    </div>
  );
}
