import type { JSX } from 'preact';
import type { Reading } from '../../../engine/model/reading.ts';
import type { Session } from '../../../engine/run/index.ts';
import { knownGood } from '../../models/known-good.ts';
import type { OpenJob } from '../../models/open-job.ts';
import { asShown } from '../../parts/as-shown.ts';

interface KnownGoodBoardProps {
  readonly job: OpenJob;
  readonly session: Session;
  readonly reading: Reading;
}

/** What known-good boards show in this reading, and the way to read it on one. */
export function KnownGoodBoard({ job, session, reading }: KnownGoodBoardProps): JSX.Element | null {
  const known = knownGood(session, reading);
  if (known === null) return null;
  const { shown, decides } = known;
  return (
    <section class="known-good" aria-label="The known-good board">
      {shown.length === 0 ? (
        <p>
          <b>The same reading on a known-good board decides here</b>, and nobody knows it yet.
        </p>
      ) : (
        <p>
          A known-good board shows{' '}
          {shown.map(({ value, from }, index) => (
            <span key={`${from} ${index}`}>
              {index > 0 && '; '}
              <b>{asShown(value)}</b> <span class="known-good-from">({from})</span>
            </span>
          ))}
        </p>
      )}
      {decides && (
        <button
          type="button"
          class="action"
          onClick={() => (job.dialog.value = { dialog: 'twin', reading: reading.id })}
        >
          Read it on the known-good board
        </button>
      )}
    </section>
  );
}
