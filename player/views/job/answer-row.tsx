import type { JSX, RefObject } from 'preact';
import { Action } from '../../parts/action.tsx';
import { ReadingField } from '../../parts/reading-field.tsx';
import type { Understanding } from '../../parts/understanding-line.tsx';

interface AnswerRowProps {
  readonly id: string;
  readonly label: string;
  readonly typed: string;
  /** The unit a bare number takes; null for words and codes. */
  readonly unit: string | null;
  readonly understanding: Understanding;
  /** Ids of what describes the field. */
  readonly describedBy: string;
  readonly field: RefObject<HTMLInputElement | null>;
  readonly first?: boolean;
  readonly onType: (typed: string) => void;
  /** Called only for what is understood. */
  readonly onCommit: () => void;
}

/** The field with the main action beside it: Enter in an empty or refused field does nothing. */
export function AnswerRow(props: AnswerRowProps): JSX.Element {
  const {
    id,
    label,
    typed,
    unit,
    understanding,
    describedBy,
    field,
    first = false,
    onType,
    onCommit,
  } = props;
  const valid = understanding.state === 'understood';
  return (
    <form
      class="answer-row"
      onSubmit={(event) => {
        event.preventDefault();
        if (valid) onCommit();
      }}
    >
      <ReadingField
        id={id}
        label={label}
        typed={typed}
        unit={unit}
        refused={understanding.state === 'refused'}
        describedBy={describedBy}
        onType={onType}
        innerRef={field}
        first={first}
      />
      <Action rank="main" keys="Enter" submit disabled={!valid}>
        Enter
      </Action>
    </form>
  );
}
