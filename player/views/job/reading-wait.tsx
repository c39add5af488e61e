import type { JSX } from 'preact';
import type { Reading } from '../../../engine/model/reading.ts';
import type { Session } from '../../../engine/run/index.ts';
import type { App } from '../../models/app.ts';
import { minutesText } from '../../models/minutes-text.ts';
import type { OpenJob } from '../../models/open-job.ts';
import { Action } from '../../parts/action.tsx';
import { WaitTimer } from './wait-timer.tsx';

interface ReadingWaitProps {
  readonly app: App;
  readonly job: OpenJob;
  readonly session: Session;
  readonly reading: Reading;
}

/** Time that must pass before this reading says anything. */
export function ReadingWait({ app, job, session, reading }: ReadingWaitProps): JSX.Element | null {
  if (reading.wait === 0) return null;
  const since = session.position.waitingSince;
  if (since !== null) return <WaitTimer clock={app.ports.clock} since={since} minutes={reading.wait} />;
  return (
    <p class="known">
      <span>Read it after {minutesText(reading.wait)}.</span>
      <Action onAct={() => void job.answer({ say: 'wait' })}>Start the clock</Action>
    </p>
  );
}
