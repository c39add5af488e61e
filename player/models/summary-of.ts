import { openWorkOf } from '../../engine/job/index.ts';
import { faultStandings, type Session } from '../../engine/run/index.ts';
import type { JobSummary } from '../ports/job-store.ts';
import { lastFinding } from './last-finding.ts';

/** What the job's card shows after its last entry. */
export function summaryOf(id: string, session: Session): JobSummary {
  const { entries, loaded, closed, position } = session;
  const opened = entries.find((entry) => entry.kind === 'opened');
  const standings = faultStandings(session);
  const count = (state: string) => standings.filter((standing) => standing.state === state).length;
  return {
    id,
    board: opened?.board ?? '',
    owner: opened?.owner ?? '',
    symptom: loaded.tree.symptom,
    finding: lastFinding(session),
    standsAt: position.section?.title ?? null,
    ruledOut: count('ruled out'),
    possible: count('possible'),
    todo: openWorkOf(entries).map(({ text }) => text),
    state: closed === null ? 'open' : closed.mended ? 'mended' : 'not mended',
    entries: entries.length,
    at: entries.at(-1)?.at ?? '',
  };
}
