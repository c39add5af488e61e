import type { JSX } from 'preact';
import type { Session } from '../../../engine/run/index.ts';
import { comesAndGoes } from '../../models/comes-and-goes.ts';
import type { OpenJob } from '../../models/open-job.ts';
import { Action } from '../../parts/action.tsx';
import { useKeys } from '../../parts/use-keys.ts';

interface BoardStateToggleProps {
  readonly job: OpenJob;
  readonly session: Session;
}

/** Whether the board fails or runs just now: asked where a fault of this tree comes and goes, or the board was seen to run. */
export function BoardStateToggle({ job, session }: BoardStateToggleProps): JSX.Element | null {
  const matters = comesAndGoes(session);
  const turn = () => {
    job.board.value = job.board.value === 'failing' ? 'running' : 'failing';
  };
  useKeys(matters ? { 'Alt R': turn } : {});
  if (!matters) return null;
  return (
    <Action rank="quiet" keys="Alt R" onAct={turn}>
      {job.board.value === 'failing' ? 'Board fails now' : <strong class="word-off">Board runs now</strong>}
    </Action>
  );
}
