import type { JSX } from 'preact';
import type { Session } from '../../../../engine/run/index.ts';
import type { Suspect } from '../../../../engine/run/suspects-of.ts';
import { type MoveLine, moveLines } from '../../../models/move-lines.ts';
import { asShown } from '../../../parts/as-shown.ts';

interface MoveListProps {
  readonly session: Session;
  readonly suspect: Suspect;
}

const sides = [
  ['for', 'Speaks for it'],
  ['against', 'Speaks against it'],
] as const;

/** Which readings moved a suspect, and by how much. */
export function MoveList({ session, suspect }: MoveListProps): JSX.Element {
  const { lines, quiet } = moveLines(session, suspect);
  if (lines.length + quiet === 0) {
    return <p class="hint">No reading has moved it yet: it stands where experience puts it.</p>;
  }
  return (
    <>
      {sides.map(([side, title]) => (
        <Side key={side} title={title} lines={lines.filter(({ way }) => way === side)} />
      ))}
      {quiet > 0 && (
        <p class="hint">
          {quiet} {lines.length > 0 ? 'more ' : ''}
          {quiet === 1 ? 'reading' : 'readings'} hardly moved it.
        </p>
      )}
    </>
  );
}

function Side({ title, lines }: { readonly title: string; readonly lines: readonly MoveLine[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h4 class="engraved">{title}</h4>
      <ul>
        {lines.map(({ reading, entry, is, showed, times }) => (
          <li key={`${reading} ${entry}`}>
            <span>
              {asShown(is)}: <b>{showed}</b>
            </span>
            <span class="move-times">{times}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
