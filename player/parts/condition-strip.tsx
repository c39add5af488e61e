import type { JSX } from 'preact';

/** One condition of the board: `Cards`, which are `out`. */
export interface ConditionShown {
  readonly name: string;
  readonly is: string;
  /** The board is not in it yet: it is drawn loud. */
  readonly changed: boolean;
}

interface ConditionStripProps {
  readonly power: 'on' | 'off' | null;
  /** The power state differs from the step before: it is drawn loud. */
  readonly changed: boolean;
  readonly conditions?: readonly ConditionShown[];
  readonly tools: readonly string[];
  readonly setUp: string | null;
}

/** How the board and the instruments must stand for this step. */
export function ConditionStrip(props: ConditionStripProps): JSX.Element | null {
  const { power, changed, conditions = [], tools, setUp } = props;
  if (power === null && conditions.length === 0 && tools.length === 0 && setUp === null) return null;
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
      {conditions.map((condition) => (
        <div
          key={condition.name}
          class={`power${condition.changed ? ' power-on power-changed' : ' power-off'}`}
        >
          <dt>{condition.name}</dt>
          <dd>
            {condition.is.toUpperCase()}
            {condition.changed && <span class="power-turn"> from now on</span>}
          </dd>
        </div>
      ))}
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
