import type { Entry } from '../model/entry.ts';
import type { Job } from '../model/job.ts';
import type { JobRecord, RecordReading, RecordRemedy } from '../model/record.ts';
import { faultStandings, findings, pathOf, replay, type Session } from '../run/index.ts';
import { benchOf, eventsOf, overridesOf } from './record-events.ts';
import { recordReadings } from './record-readings.ts';
import { recordSettings } from './record-settings.ts';
import { recordSuspects } from './record-suspects.ts';
import { laterTreesOf, treeRow } from './record-trees.ts';

/** The record of a job as it stands. */
export function recordOf(job: Job): JobRecord {
  const { id, tree, entries } = job;
  const session = replay(tree, entries, job);
  const opened = entries.find((entry) => entry.kind === 'opened');
  const closing = session.closed === null ? undefined : entries.findLast((entry) => entry.kind === 'closed');
  const readings = recordReadings(session);
  return {
    format: 1,
    kind: 'record',
    job: id,
    board: opened?.board ?? '',
    owner: opened?.owner ?? '',
    story: opened?.story ?? '',
    tree: treeRow(tree),
    laterTrees: laterTreesOf(job),
    sheet: job.board && { id: job.board.id, title: job.board.title, digest: job.board.digest },
    bench: benchOf(session),
    opened: opened?.at ?? '',
    closed: closing?.at ?? null,
    outcome: session.closed === null ? 'open' : session.closed.mended ? 'mended' : 'not mended',
    closing: closing?.note ?? '',
    settings: recordSettings(session),
    readings,
    findings: findings(session).map(({ reading, text }) => ({ reading: reading.id, is: reading.is, text })),
    overrides: overridesOf(session),
    events: eventsOf(session),
    path: pathOf(session.position).map(({ title }) => title),
    remedies: session.position.remedies.map((done) => remedyOf(session, done)),
    proof: proofOf(session, readings),
    ruledOut: faultStandings(session)
      .filter(({ state }) => state === 'ruled out')
      .map(({ fault, contradictions }) => ({
        fault: fault.id,
        is: fault.is,
        by: contradictions
          .map(({ reading, showed }) => `${isOf(session, reading)}: ${showed.join(' or ')}`)
          .join('; '),
      })),
    suspects: recordSuspects(session),
    openWork: openWorkOf(entries).map(({ at, text }) => ({ at, text })),
    notes: entries.flatMap((entry) => (entry.kind === 'note' ? [{ at: entry.at, text: entry.text }] : [])),
  };
}

/** Open work that nobody has ticked off. */
export function openWorkOf(
  entries: readonly Entry[],
): readonly { at: string; text: string; entry: number }[] {
  const done = new Set(entries.flatMap((entry) => (entry.kind === 'todo-done' ? [entry.of] : [])));
  return entries.flatMap((entry, index) =>
    entry.kind === 'todo' && !done.has(index) ? [{ at: entry.at, text: entry.text, entry: index }] : [],
  );
}

const isOf = (session: Session, reading: string): string =>
  session.loaded.readings.get(reading)?.is ?? reading;

function remedyOf(session: Session, done: Session['position']['remedies'][number]): RecordRemedy {
  const entry = session.entries[done.entry];
  const remedied = entry?.kind === 'remedied' ? entry : null;
  return {
    at: entry?.at ?? '',
    fault: done.fault,
    is: session.loaded.faults.get(done.fault)?.is ?? done.fault,
    which: remedied?.which ?? '',
    parts: remedied?.parts ?? [],
    effect: done.effect,
  };
}

/** What was read after the remedy that mended the board. */
function proofOf(session: Session, readings: readonly RecordReading[]): readonly RecordReading[] {
  const last = session.position.remedies.at(-1);
  if (last?.effect !== 'mended') return [];
  return readings.filter(({ entry, verdict }) => entry - 1 > last.entry && verdict === 'normal');
}
