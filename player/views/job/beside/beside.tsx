import type { JSX } from 'preact';
import { openWorkOf } from '../../../../engine/job/index.ts';
import {
  type Finding,
  faultStandings,
  findings,
  nameHere,
  pathOf,
  type Session,
} from '../../../../engine/run/index.ts';
import type { App } from '../../../models/app.ts';
import { findingWords } from '../../../models/finding-words.ts';
import type { OpenJob } from '../../../models/open-job.ts';
import { readingRows } from '../../../models/reading-rows.ts';
import { asShown } from '../../../parts/as-shown.ts';
import { Ledger } from '../../../parts/ledger.tsx';
import { SettingList } from '../setting-list.tsx';
import { ProposalCard } from '../suspects/proposal-card.tsx';
import { SuspectsPanel } from '../suspects/suspects-panel.tsx';
import { FaultList } from './fault-list.tsx';
import { OpenWork } from './open-work.tsx';
import { ReadingList } from './reading-list.tsx';
import { WalkedPath } from './walked-path.tsx';

interface BesideProps {
  readonly app: App;
  readonly job: OpenJob;
  readonly session: Session;
}

/** From this width on it stands beside the work; below it is folded behind it. */
const wide = '(min-width: 70rem)';

/** What is known so far. */
export function Beside({ job, session }: BesideProps): JSX.Element {
  const open = globalThis.matchMedia?.(wide).matches ?? true;
  const rows = readingRows(session);
  const standings = faultStandings(session);
  const listed = new Set(job.ranking.suspects.value?.first.map(({ id }) => id));
  const ruledOut = standings.filter(({ state, fault }) => state === 'ruled out' && !listed.has(fault.id));
  const tried = standings.filter(({ state }) => state === 'mended' || state === 'put aside');
  const path = pathOf(session.position);
  const work = openWorkOf(session.entries);
  const found = findings(session);
  return (
    <aside class="beside" aria-label="What is known so far">
      {found.length > 0 && (
        <Ledger title="What they say together" count={found.length} open={open}>
          <ul class="rows">
            {found.map((finding) => (
              <li key={finding.reading.id} class="row">
                <span class="row-fault">{findingWords(finding)}</span>
                <span class="row-more">from {fromWords(session, finding)}</span>
              </li>
            ))}
          </ul>
        </Ledger>
      )}
      {session.closed === null && standings.length > 0 && (
        <Ledger title="Suspects" open={open}>
          <ProposalCard job={job} />
          <SuspectsPanel job={job} />
        </Ledger>
      )}
      <Ledger title="Read so far" count={rows.length} open={open}>
        <ReadingList
          rows={rows}
          onRetake={(reading, of) => (job.dialog.value = { dialog: 'retake', reading, of })}
        />
      </Ledger>
      {ruledOut.length > 0 && (
        <Ledger title="Ruled out" count={ruledOut.length} open={open && ruledOut.length <= 8}>
          <FaultList session={session} standings={ruledOut} />
        </Ledger>
      )}
      {tried.length > 0 && (
        <Ledger title="Mended or put aside" count={tried.length} open={open}>
          <FaultList session={session} standings={tried} />
        </Ledger>
      )}
      <Ledger title="The way here" count={path.length} open={false}>
        <WalkedPath path={path} />
      </Ledger>
      {work.length > 0 && (
        <Ledger title="Open work" count={work.length} open={open}>
          <OpenWork work={work} onDone={(of) => void job.answer({ say: 'todo-done', of })} />
        </Ledger>
      )}
      {session.loaded.tree.settings.length > 0 && (
        <Ledger title="How it is set" open={false}>
          <SettingList
            session={session}
            onChange={(setting) => (job.dialog.value = { dialog: 'change-setting', setting })}
          />
        </Ledger>
      )}
    </aside>
  );
}

const fromWords = (session: Session, { from, reading }: Finding): string => {
  const names = from.length > 0 ? from.map((known) => known.reading) : [reading.id];
  return asShown(names.map((id) => nameHere(session, id)).join(', '));
};
