import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { withoutRemark } from '../../../models/fault-name.ts';
import type { OpenJob } from '../../../models/open-job.ts';
import type { SuspectLine } from '../../../models/suspect-lines.ts';
import { asShown } from '../../../parts/as-shown.ts';
import { ShareBar } from '../../../parts/share-bar.tsx';
import { MoveList } from './move-list.tsx';

interface SuspectRowProps {
  readonly job: OpenJob;
  readonly line: SuspectLine;
}

/** One suspect: how likely, and on request what moved it. */
export function SuspectRow({ job, line }: SuspectRowProps): JSX.Element {
  const open = useSignal(false);
  const { id, names, words, percent, share, isNone, against } = line;
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
          <ShareBar share={share} filling={isNone ? 'dotted' : 'hatched'} />
          {against !== null && (
            <span class="suspect-counter">
              against it: {asShown(`${against.is}: ${against.showed}`)} <b>{against.times}</b>
            </span>
          )}
        </summary>
        {open.value && (
          <div class="moves">
            {names.some((name) => withoutRemark(name) !== name) && <p>{names.join(' and ')}</p>}
            <MoveList job={job} suspect={id} />
          </div>
        )}
      </details>
    </li>
  );
}
