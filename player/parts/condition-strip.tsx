import type { JSX } from 'preact';

interface ConditionStripProps {
  readonly power: 'on' | 'off' | null;
  /** The power state differs from the step before: it is drawn loud. */
  readonly changed: boolean;
  readonly tools: readonly string[];
  readonly setUp: string | null;
}

/** How the board and the instruments must stand for this step. */
export function ConditionStrip({ power, changed, tools, setUp }: ConditionStripProps): JSX.Element | null {
  if (power === null && tools.length === 0 && setUp === null) return null;
  return (
    <dl class="strip">
      {power !== null && (
        <div class={`power power-${power}${changed ? ' power-changed' : ''}`}>
          <dt>Power</dt>
          <dd>
            {power.toUpperCase()}
            {changed && (
              <span class="power-turn">{power === 'on' ? ' switch on now' : ' switch off now'}</span>
            )}
          </dd>
        </div>
      )}
      {tools.length > 0 && (
        <div>
          <dt>With</dt>
          <dd>{tools.join(', ')}</dd>
        </div>
      )}
      {setUp !== null && (
        <div>
          <dt>Set to</dt>
          <dd>{setUp}</dd>
        </div>
      )}
    </dl>
  );
}
