import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Session } from '../../../../engine/run/index.ts';
import { withoutRemark } from '../../../models/fault-name.ts';
import { movesAgainst } from '../../../models/move-lines.ts';
import type { SuspectLine } from '../../../models/suspect-lines.ts';
import { asShown } from '../../../parts/as-shown.ts';
import { ShareBar } from '../../../parts/share-bar.tsx';
import { MoveList } from './move-list.tsx';

interface SuspectRowProps {
  readonly session: Session;
  readonly line: SuspectLine;
  /** Nothing fits: what speaks most against it stands in the row. */
  readonly against: boolean;
}

/** One suspect: how likely, and on request what moved it. */
export function SuspectRow({ session, line, against }: SuspectRowProps): JSX.Element {
  const open = useSignal(false);
  const { names, words, percent, share, suspect } = line;
  const [counter] = against ? movesAgainst(session, suspect) : [];
  return (
    <li class="suspect">
      <details onToggle={({ currentTarget }) => (open.value = currentTarget.open)}>
        <summary>
          <span class="suspect-name">
            {names.map((name, index) => (
              <span key={name}>
                {index > 0 && <em> and </em>}
                {withoutRemark(name)}
              </span>
            ))}
            {names.length > 1 && <em> together</em>}
          </span>
          <span class="suspect-share">
            <b>{words}</b> <span class="suspect-percent">{asShown(percent)}</span>
          </span>
          <ShareBar share={share} filling={suspect.faults.length === 0 ? 'dotted' : 'hatched'} />
          {counter !== undefined && (
            <span class="suspect-counter">
              against it: {asShown(`${counter.is}: ${counter.showed}`)} <b>{counter.times}</b>
            </span>
          )}
        </summary>
        {open.value && (
          <div class="moves">
            {names.some((name) => withoutRemark(name) !== name) && <p>{names.join(' and ')}</p>}
            <MoveList session={session} suspect={suspect} />
          </div>
        )}
      </details>
    </li>
  );
}
