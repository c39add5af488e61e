import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import type { MoveLine, MoveLines } from '../../../models/move-lines.ts';
import type { OpenJob } from '../../../models/open-job.ts';
import { asShown } from '../../../parts/as-shown.ts';

interface MoveListProps {
  readonly job: OpenJob;
  /** Its id. */
  readonly suspect: string;
}

const sides = [
  ['for', 'Speaks for it'],
  ['against', 'Speaks against it'],
] as const;

/** Which readings moved a suspect, and by how much. */
export function MoveList({ job, suspect }: MoveListProps): JSX.Element {
  const moves = useSignal<MoveLines | null>(null);
  const ranked = job.ranking.suspects.value;
  useEffect(() => {
    let wanted = true;
    void job.ranking.moves(suspect).then((found) => {
      if (wanted && found !== null) moves.value = found;
    });
    return () => {
      wanted = false;
    };
  }, [ranked, suspect]);
  if (moves.value === null) return <p class="hint">Being worked out …</p>;
  const { lines, quiet } = moves.value;
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
