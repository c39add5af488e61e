import type { JSX } from 'preact';
import type { Session } from '../../../engine/run/index.ts';
import { comesAndGoes } from '../../models/comes-and-goes.ts';
import type { OpenJob } from '../../models/open-job.ts';
import { Choice } from '../../parts/choice.tsx';

interface BoardStateChoiceProps {
  readonly job: OpenJob;
  readonly session: Session;
}

/** Whether the board fails or runs just now: asked where a fault of this tree comes and goes. */
export function BoardStateChoice({ job, session }: BoardStateChoiceProps): JSX.Element | null {
  if (!comesAndGoes(session)) return null;
  return (
    <Choice
      label="The board"
      value={job.board.value}
      onChoose={(state) => (job.board.value = state)}
      choices={[
        { value: 'failing', text: 'fails' },
        { value: 'running', text: 'runs' },
      ]}
    />
  );
}
