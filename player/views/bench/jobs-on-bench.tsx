import type { JSX } from 'preact';
import type { Bench } from '../../models/bench.ts';
import { BlankState } from '../../parts/blank-state.tsx';
import { JobCard } from './job-card.tsx';

/** Open jobs, the newest work first; closed ones folded away. */
export function JobsOnBench({ bench }: { readonly bench: Bench }): JSX.Element {
  const jobs = bench.jobs.value;
  if (jobs.state === 'loading') return <BlankState title="Looking what is on the bench" />;
  if (jobs.state === 'failed') {
    return (
      <BlankState title="The bench cannot be read" trouble>
        <p>{jobs.why}.</p>
        <button type="button" class="action" onClick={() => void bench.load()}>
          Try again
        </button>
      </BlankState>
    );
  }
  return (
    <>
      {bench.open.value.length === 0 ? (
        <BlankState title="The bench is clear">
          <p>A job stands here from its first reading until it is closed. It is kept on this device.</p>
        </BlankState>
      ) : (
        <ul class="cards">
          {bench.open.value.map((job) => (
            <JobCard key={job.id} job={job} />
          ))}
        </ul>
      )}
      {bench.closed.value.length > 0 && (
        <details class="ledger">
          <summary>
            <span class="ledger-title">Closed</span>
            <span class="ledger-count">{bench.closed.value.length}</span>
          </summary>
          <ul class="cards">
            {bench.closed.value.map((job) => (
              <JobCard key={job.id} job={job} />
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
