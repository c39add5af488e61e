import type { JSX } from 'preact';
import type { OpenJob } from '../../../models/open-job.ts';
import type { SuspectLine } from '../../../models/suspect-lines.ts';
import { FitsNothing } from './fits-nothing.tsx';
import { SuspectRow } from './suspect-row.tsx';

interface SuspectsPanelProps {
  readonly job: OpenJob;
}

/** The suspects, likeliest first, with what moved each. */
export function SuspectsPanel({ job }: SuspectsPanelProps): JSX.Element {
  const lines = job.ranking.suspects.value;
  if (lines === null) {
    return (
      <p class="hint">
        {job.ranking.failed.value
          ? 'The ranking could not be fetched. It is tried again at the next entry.'
          : 'Being ranked …'}
      </p>
    );
  }
  const { fits, first, rest, restWords, odd } = lines;
  const draw = (some: readonly SuspectLine[]) => (
    <ol class="suspects">
      {some.map((line) => (
        <SuspectRow key={line.id} job={job} line={line} />
      ))}
    </ol>
  );
  return (
    <div class="suspects-panel">
      {!fits && <FitsNothing job={job} odd={odd} />}
      {draw(first)}
      {rest.length > 0 && (
        <details class="older">
          <summary>{restWords}</summary>
          {draw(rest)}
        </details>
      )}
      <p class="hint">
        Open a suspect to see what moved it. ×2: twice as likely as before, against all others.
      </p>
    </div>
  );
}
