import type { JSX } from 'preact';
import { useId } from 'preact/hooks';

interface TextFieldProps {
  readonly label: string;
  readonly hint?: string;
  readonly value: string;
  readonly onType: (value: string) => void;
  /** More than one line. */
  readonly tall?: boolean;
  readonly first?: boolean;
  readonly required?: boolean;
}

/** A field for words. */
export function TextField(props: TextFieldProps): JSX.Element {
  const { label, hint, value, onType, tall = false, first = false, required = false } = props;
  const id = useId();
  const shared = {
    id,
    value,
    required,
    class: 'words-input',
    autoComplete: 'off',
    'data-first': first ? '' : undefined,
    'aria-describedby': hint === undefined ? undefined : `${id}-hint`,
  };
  return (
    <div class="words">
      <label for={id}>{label}</label>
      {tall ? (
        <textarea {...shared} rows={3} onInput={(event) => onType(event.currentTarget.value)} />
      ) : (
        <input {...shared} type="text" onInput={(event) => onType(event.currentTarget.value)} />
      )}
      {hint !== undefined && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
    </div>
  );
}
