import type { ComponentChildren, JSX, Ref } from 'preact';
import { ariaKey } from './aria-key.ts';
import { KeyHint } from './key-hint.tsx';

interface ActionProps {
  readonly children: ComponentChildren;
  readonly onAct?: () => void;
  /** `main` is the one way on of a screen; `quiet` stands in a row of lesser ones. */
  readonly rank?: 'main' | 'plain' | 'quiet';
  /** As drawn: `Enter`, `Alt B`. */
  readonly keys?: string;
  readonly submit?: boolean;
  /** Id of the form it submits from outside of it. */
  readonly form?: string;
  readonly disabled?: boolean;
  readonly innerRef?: Ref<HTMLButtonElement>;
}

/** A button with its key on it. */
export function Action(props: ActionProps): JSX.Element {
  const { children, onAct, rank = 'plain', keys, submit = false, form, disabled = false, innerRef } = props;
  return (
    <button
      type={submit || form !== undefined ? 'submit' : 'button'}
      form={form}
      class={`action action-${rank}`}
      disabled={disabled}
      onClick={onAct}
      ref={innerRef ?? null}
      {...(keys !== undefined && { 'aria-keyshortcuts': ariaKey(keys) })}
    >
      <span>{children}</span>
      {keys !== undefined && <KeyHint keys={keys} />}
    </button>
  );
}
