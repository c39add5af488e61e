import type { JSX } from 'preact';
import type { JobSummary } from '../../ports/job-store.ts';
import { dayText } from '../record/day-text.ts';

const stateWords: Record<JobSummary['state'], string> = {
  open: 'on the bench',
  mended: 'mended',
  'not mended': 'not mended',
};

/** One job: the board, what was found last, what is open. */
export function JobCard({ job }: { readonly job: JobSummary }): JSX.Element {
  return (
    <li class={`card card-${job.state.replace(' ', '-')}`}>
      <a class="card-link" href={`#/job/${encodeURIComponent(job.id)}`}>
        {job.board}
      </a>
      <p class="card-state">
        <span>{stateWords[job.state]}</span>
        {job.at !== '' && <span class="dot-before">{dayText(job.at)}</span>}
        {job.owner !== '' && <span class="dot-before">{job.owner}</span>}
      </p>
      <p class="card-finding">{job.finding ?? job.symptom}</p>
      {job.state === 'open' && (
        <p class="card-counts">
          {job.standsAt !== null && <span>Stands at: {job.standsAt}</span>}
          <span class="dot-before">
            {job.ruledOut} ruled out, {job.possible} still possible
          </span>
        </p>
      )}
      {job.todo.length > 0 && (
        <p class="card-todo">
          <strong>Open work:</strong> {job.todo.join('; ')}
        </p>
      )}
    </li>
  );
}
