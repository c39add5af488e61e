import type { JSX } from 'preact';
import type { Setting } from '../../../engine/model/setting.ts';
import type { Session } from '../../../engine/run/index.ts';
import { type Jumpers, jumpersOf, moved, wayText } from '../../models/jumpers-of.ts';
import type { SettingHow } from '../../models/setting-value.ts';
import { asShown } from '../../parts/as-shown.ts';

interface JumperTableProps {
  readonly session: Session;
  readonly setting: Setting;
  readonly how: SettingHow;
  /** What stands in the field: a value, or positions. */
  readonly typed: string;
  readonly onType: (text: string) => void;
}

/** The board's jumpers for one setting: pressed, they write the field; a value in the field shows where they belong. */
export function JumperTable(props: JumperTableProps): JSX.Element | null {
  const { session, setting, how, typed, onType } = props;
  const jumpers = jumpersOf(session, setting, typed, how);
  if (jumpers === null) return null;
  return (
    <section class="jumpers" aria-labelledby="jumpers-head">
      <h2 id="jumpers-head">Jumpers of this board</h2>
      <p class="hint">Press where each one sits, or type a value to see where they belong.</p>
      <div class="jumper-rows">
        {jumpers.jumpers.map(({ id, is, positions }) => (
          // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row of the grid
          <div key={id} class="jumper" role="group" aria-label={`${id}, ${is}`}>
            <span class="jumper-name">
              <b>{id}</b> {is}
            </span>
            <span class="jumper-positions">
              {positions.map((position) => (
                <button
                  key={position}
                  type="button"
                  class={`position${isWanted(jumpers, id, position) ? ' position-wanted' : ''}`}
                  aria-pressed={jumpers.at[id] === position}
                  onClick={() => onType(moved(jumpers, id, position))}
                >
                  {position}
                  {isWanted(jumpers, id, position) && <span class="unseen"> belongs here</span>}
                </button>
              ))}
            </span>
          </div>
        ))}
      </div>
      <Ways jumpers={jumpers} />
      <details class="ledger">
        <summary>
          <span class="ledger-title">The whole table</span>
          <span class="ledger-count">{jumpers.rows.length}</span>
        </summary>
        <dl class="facts">
          {jumpers.rows.map(({ value, positions }) => (
            <div key={positions}>
              <dt>{positions}</dt>
              <dd>
                <button type="button" class="offer" onClick={() => onType(positions)}>
                  {asShown(value)}
                </button>
              </dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}

const isWanted = ({ ways }: Jumpers, jumper: string, position: string): boolean =>
  ways[0]?.at[jumper] === position;

/** What the positions make, or which positions make what is wanted. */
function Ways({ jumpers }: { readonly jumpers: Jumpers }): JSX.Element | null {
  const { makes, ways } = jumpers;
  const [first, ...others] = ways;
  if (makes === null) return null;
  if (first === undefined) {
    return Object.keys(jumpers.at).length === 0 ? (
      <p role="status">
        No position of these jumpers makes <b>{asShown(makes)}</b>.
      </p>
    ) : null;
  }
  return (
    <p role="status">
      <b>{asShown(makes)}</b>: {wayText(jumpers, first)}
      {others.length > 0 && `, or ${others.map((way) => wayText(jumpers, way)).join(', or ')}`}
    </p>
  );
}
