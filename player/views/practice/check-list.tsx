import type { JSX } from 'preact';
import type { DrillCheck } from '../../../engine/practice/drill.ts';
import { minutesText } from '../../models/minutes-text.ts';
import type { CheckGroup } from '../../models/practice/check-groups.ts';
import { asShown } from '../../parts/as-shown.ts';
import { Figure } from '../../parts/figure.tsx';

interface CheckListProps {
  readonly groups: readonly CheckGroup<DrillCheck>[];
  readonly onPick: (reading: string) => void;
}

/** Everything that can be measured, by what it takes. */
export function CheckList({ groups, onPick }: CheckListProps): JSX.Element {
  return (
    <div class="check-groups">
      {groups.map(({ title, checks }) => (
        <section key={title} aria-label={title}>
          <h2 class="check-group">{title}</h2>
          <ul class="check-list">
            {checks.map((check) => (
              <li key={check.reading.id}>
                <CheckRow check={check} onPick={onPick} />
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

interface CheckRowProps {
  readonly check: DrillCheck;
  readonly onPick: (reading: string) => void;
}

function CheckRow({ check, onPick }: CheckRowProps): JSX.Element {
  const { reading, minutes, wait, taken, lacks } = check;
  const last = taken.at(-1);
  const more = [
    ...reading.with,
    minutesText(minutes),
    ...(wait > 0 ? [`${minutesText(wait)} of waiting`] : []),
  ];
  return (
    <button
      type="button"
      class={`check-row${last === undefined ? '' : ' check-taken'}`}
      disabled={lacks !== null}
      onClick={() => onPick(reading.id)}
    >
      <span class="check-name">{asShown(reading.is)}</span>
      {last !== undefined && (
        <span class="check-value">
          <Figure text={last} size="row" />
        </span>
      )}
      <span class="check-more">{lacks === null ? more.join(' · ') : `No ${lacks} on this bench`}</span>
    </button>
  );
}
