import type { JSX } from 'preact';
import type { MoveLine } from '../../../models/move-lines.ts';
import type { OpenJob } from '../../../models/open-job.ts';
import { asShown } from '../../../parts/as-shown.ts';

interface FitsNothingProps {
  readonly job: OpenJob;
  /** What fits least. */
  readonly odd: MoveLine | null;
}

/** The readings fit no fault: what to do about it. */
export function FitsNothing({ job, odd }: FitsNothingProps): JSX.Element {
  return (
    <section class="fits-nothing" aria-label="What to do">
      <p>
        <strong>These readings fit no fault in this tree.</strong>
      </p>
      <ol>
        <li>
          Take the odd one again{odd !== null && `: ${asShown(odd.is)}, which was ${odd.showed}`}.
          {odd?.entry != null && <RetakeOdd job={job} reading={odd.reading} of={odd.entry} />}
        </li>
        <li>Was it the wrong point? Look where the tips stood, and where black was.</li>
        <li>Look below at what speaks against each. What still stands then is a fault nobody wrote down.</li>
      </ol>
    </section>
  );
}

interface RetakeOddProps {
  readonly job: OpenJob;
  readonly reading: string;
  readonly of: number;
}

const RetakeOdd = ({ job, reading, of }: RetakeOddProps): JSX.Element => (
  <button type="button" class="action" onClick={() => (job.dialog.value = { dialog: 'retake', reading, of })}>
    Take it again
  </button>
);
