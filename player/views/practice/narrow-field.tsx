import type { JSX } from 'preact';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { Action } from '../../parts/action.tsx';
import { ReadingField } from '../../parts/reading-field.tsx';
import { isTouch } from '../job/is-touch.ts';

interface NarrowFieldProps {
  readonly label: string;
  readonly typed: string;
  /** How many are left. */
  readonly left: number;
  /** What the main action takes: the last one left, or what is offered while nothing is typed; null for neither. */
  readonly takes: string | null;
  readonly onType: (typed: string) => void;
  readonly onTake: () => void;
}

/** The field at the foot of a list: typing narrows it, Enter takes the last one left. */
export function NarrowField({ label, typed, left, takes, onType, onTake }: NarrowFieldProps): JSX.Element {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => {
    if (!isTouch()) field.current?.focus({ preventScroll: true });
  }, []);
  return (
    <>
      <label class="engraved" for={id} aria-hidden="true">
        {label}
      </label>
      <form
        class="answer-row"
        onSubmit={(event) => {
          event.preventDefault();
          if (takes !== null) onTake();
        }}
      >
        <ReadingField
          id={id}
          label={label}
          typed={typed}
          unit={null}
          refused={typed !== '' && left === 0}
          describedBy={`${id}-left`}
          onType={onType}
          innerRef={field}
        />
        <Action rank="main" keys="Enter" submit disabled={takes === null}>
          Take it
        </Action>
      </form>
      <p class="narrow-left hint" role="status" id={`${id}-left`}>
        {takes !== null ? takes : leftWords(left)}
      </p>
    </>
  );
}

function leftWords(left: number): string {
  if (left === 0) return 'Nothing here has these words. Fewer words find more';
  return `${left} ${left === 1 ? 'is' : 'are'} left: type part of a name, or press one`;
}
