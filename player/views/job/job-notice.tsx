import type { JSX } from 'preact';
import type { Session } from '../../../engine/run/index.ts';
import type { App } from '../../models/app.ts';
import type { OpenJob } from '../../models/open-job.ts';
import { saveJob } from '../../models/save-job.ts';
import { NoticeLine } from '../../parts/notice-line.tsx';

interface JobNoticeProps {
  readonly app: App;
  readonly job: OpenJob;
  readonly session: Session;
}

/** What was not entered and why, with the ways out. */
export function JobNotice({ app, job, session }: JobNoticeProps): JSX.Element | null {
  const notice = job.notice.value;
  if (notice === null) return null;
  return (
    <NoticeLine tone={notice.tone} text={notice.text} onDismiss={() => (job.notice.value = null)}>
      {notice.offers.map((offer) => (
        <button key={offer} type="button" class="offer" onClick={() => (job.typed.value = offer)}>
          {offer}
        </button>
      ))}
      {notice.offerFile && (
        <button type="button" class="action" onClick={() => saveJob(app.ports.files, job.id, session)}>
          Save the job as a file
        </button>
      )}
    </NoticeLine>
  );
}
