import type { JSX } from 'preact';
import { Action } from './action.tsx';

interface TriesFaceProps {
  readonly good: number;
  readonly of: number;
  /** So many alike in a row settle it. */
  readonly enough: number;
  /** What it still takes; null where it is settled. */
  readonly left: string | null;
  readonly onWorked: () => void;
  readonly onFailed: () => void;
}

/** More than these are told by the figure alone. */
const mostPips = 60;

/** The face of a count: a pip for every try, and two buttons to count with. */
export function TriesFace({ good, of, enough, left, onWorked, onFailed }: TriesFaceProps): JSX.Element {
  const pips = Math.min(Math.max(of, enough), mostPips);
  const stateOf = (at: number) => (at >= of ? 'due' : at < good ? 'worked' : 'failed');
  return (
    <div class="tries">
      <div class="tries-count">
        <Action keys="Alt J" onAct={onWorked}>
          It worked
        </Action>
        <Action keys="Alt K" onAct={onFailed}>
          It failed
        </Action>
      </div>
      <ol class="pips" aria-hidden="true">
        {Array.from({ length: pips }, (_, at) => (
          <li key={at} class={`pip pip-${stateOf(at)}`} />
        ))}
      </ol>
      <p class="tries-left" role="status">
        <strong>
          {good} worked, {of - good} failed
        </strong>
        <span class="dot-before">{left ?? 'that settles it'}</span>
      </p>
    </div>
  );
}
