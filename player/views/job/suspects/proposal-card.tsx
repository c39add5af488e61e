import type { JSX } from 'preact';
import type { OpenJob } from '../../../models/open-job.ts';
import { takeDetour } from '../../../models/take-detour.ts';
import { Action } from '../../../parts/action.tsx';
import { asShown } from '../../../parts/as-shown.ts';

interface ProposalCardProps {
  readonly job: OpenJob;
}

/** A check that is quicker than the tree's own next one: what it tells, why, and the way there. */
export function ProposalCard({ job }: ProposalCardProps): JSX.Element | null {
  const proposal = job.ranking.proposal.value;
  if (proposal === null) return null;
  const { check, tells, left, changes, likeliest, under } = proposal;
  return (
    <section class="proposal" aria-label="Quicker from here">
      <p>
        Quicker from here: <strong>{asShown(check)}</strong> {tells}; {asShown(left)}.
        {changes !== '' && ` First: ${changes}.`}
      </p>
      <details class="proposal-why">
        <summary>Why this one</summary>
        <dl>
          {under.map(({ band, suspects }) => (
            <div key={band}>
              <dt>{band}</dt>
              <dd>under {suspects.join('; under ')}</dd>
            </div>
          ))}
        </dl>
        {likeliest !== '' && <p class="hint">Expected now: {likeliest}.</p>}
        <p class="hint">The tree's order stays: the detour can be left at any time.</p>
      </details>
      <Action keys="Alt Q" onAct={() => void takeDetour(job, proposal)}>
        Take this detour
      </Action>
    </section>
  );
}
