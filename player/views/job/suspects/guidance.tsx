import type { JSX } from 'preact';
import type { Session } from '../../../../engine/run/index.ts';
import type { OpenJob } from '../../../models/open-job.ts';
import { Action } from '../../../parts/action.tsx';
import { asShown } from '../../../parts/as-shown.ts';

interface GuidanceProps {
  readonly job: OpenJob;
  readonly session: Session;
}

/** Above the step, and only when there is something to say: a detour, readings that fit nothing, and where nothing stands
 *  beside the step, that another check would be quicker. */
export function Guidance({ job, session }: GuidanceProps): JSX.Element {
  return (
    <div class="guidance">
      <div role="status">
        <DetourStrip job={job} session={session} />
        <FitStrip job={job} />
      </div>
      <QuickerLine job={job} />
    </div>
  );
}

function DetourStrip({ job, session }: GuidanceProps): JSX.Element | null {
  const { detour } = session.position;
  if (detour === null) return null;
  const title = session.loaded.sections.get(detour.section)?.title ?? detour.section;
  return (
    <div class="guidance-strip">
      <p>
        <b>Detour:</b> you left <i>{title}</i>
      </p>
      <Action rank="quiet" keys="Alt T" onAct={() => void job.answer({ say: 'return' })}>
        Go back there
      </Action>
    </div>
  );
}

function FitStrip({ job }: Pick<GuidanceProps, 'job'>): JSX.Element | null {
  if (job.ranking.suspects.value?.fits !== false) return null;
  return (
    <div class="guidance-strip guidance-loud">
      <p>
        <b>These readings fit no fault in this tree.</b>
      </p>
      <Action rank="quiet" keys="Alt U" onAct={() => (job.dialog.value = { dialog: 'suspects' })}>
        What to do
      </Action>
    </div>
  );
}

function QuickerLine({ job }: Pick<GuidanceProps, 'job'>): JSX.Element | null {
  const proposal = job.ranking.proposal.value;
  if (proposal === null) return null;
  return (
    <button type="button" class="quicker-line" onClick={() => (job.dialog.value = { dialog: 'suspects' })}>
      Quicker<span class="roomy"> from here</span>: <b>{asShown(proposal.check)}</b>
    </button>
  );
}
