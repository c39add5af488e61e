import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Session } from '../../../engine/run/index.ts';
import type { App } from '../../models/app.ts';
import { benchMinutes, clockText } from '../../models/bench-minutes.ts';
import type { OpenJob } from '../../models/open-job.ts';
import { placeOfRoute } from '../../models/route.ts';

interface JobHeadProps {
  readonly app: App;
  readonly job: OpenJob;
  readonly session: Session;
  readonly board: string;
}

/** Which board this is, the time at the bench, and the way to the record. */
export function JobHead({ app, job, session, board }: JobHeadProps): JSX.Element {
  const { clock } = app.ports;
  const now = useSignal(clock.now());
  useEffect(() => clock.every(20, () => (now.value = clock.now())), []);
  const minutes = benchMinutes(session.entries, session.closed === null ? now.value : null);
  return (
    <>
      <span class="head-board">{board}</span>
      <span class="head-clock" title="Hours and minutes at the bench">
        <span class="unseen">Time at the bench, hours and minutes: </span>
        {clockText(minutes)}
      </span>
      {session.closed === null && (
        <button
          type="button"
          class="action action-quiet head-suspects"
          onClick={() => (job.dialog.value = { dialog: 'suspects' })}
        >
          Suspects
          {job.ranking.proposal.value !== null && (
            <span class="head-quicker">
              <span class="unseen">, and a quicker check</span>
            </span>
          )}
        </button>
      )}
      <a class="action action-quiet" href={`#${placeOfRoute({ screen: 'record', id: job.id })}`}>
        Record
      </a>
    </>
  );
}
