import type { JSX } from 'preact';
import type { Session } from '../../../engine/run/index.ts';
import type { OpenJob } from '../../models/open-job.ts';
import { Action } from '../../parts/action.tsx';
import { useKeys } from '../../parts/use-keys.ts';

interface BoardStateToggleProps {
  readonly job: OpenJob;
  readonly session: Session;
}

/** Whether the board fails or runs just now: asked where a fault of this tree comes and goes. */
export function BoardStateToggle({ job, session }: BoardStateToggleProps): JSX.Element | null {
  const comesAndGoes = session.loaded.tree.faults.some(({ comes }) => comes === 'sometimes');
  const turn = () => {
    job.board.value = job.board.value === 'failing' ? 'running' : 'failing';
  };
  useKeys(comesAndGoes ? { 'Alt R': turn } : {});
  if (!comesAndGoes) return null;
  return (
    <Action rank="quiet" keys="Alt R" onAct={turn}>
      {job.board.value === 'failing' ? 'Board fails now' : <strong class="word-off">Board runs now</strong>}
    </Action>
  );
}
