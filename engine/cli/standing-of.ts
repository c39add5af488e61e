import { printInstrument } from '../doubt/index.ts';
import { openWorkOf } from '../job/index.ts';
import type { Job } from '../model/job.ts';
import { printQuantity } from '../quantity/index.ts';
import {
  faultStandings,
  findings,
  hazardsHere,
  type Known,
  latest,
  machineValue,
  pathOf,
  questionOf,
  type Session,
} from '../run/index.ts';
import { observationText } from '../scale/index.ts';
import { askedOf } from './asked-of.ts';

/** Where a job stands, as plain data: what `walk --json` prints. */
export function standingOf(job: Job, session: Session) {
  const { section, phase, conditions } = session.position;
  const { tree } = session.loaded;
  const { instruments, lacking, rule } = session.equipment;
  return {
    job: job.id,
    tree: { id: tree.id, title: tree.title, digest: tree.digest },
    sheet: job.board && { id: job.board.id, title: job.board.title, digest: job.board.digest },
    entries: session.entries.length,
    machine: machineValue(session),
    section: section === null ? null : { id: section.id, title: section.title, kind: section.kind, phase },
    asks: askedOf(session, questionOf(session)),
    hazards: hazardsHere(session).map(({ word }) => word),
    settings: Object.fromEntries(session.settings),
    conditions,
    equipment: { instruments: instruments.map(printInstrument), lacking, rule },
    known: [...session.history.keys()].flatMap((reading) => {
      const known = latest(session, reading);
      return known === null ? [] : [{ reading, ...knownText(known), bands: known.bands, stale: known.stale }];
    }),
    findings: findings(session).map(({ reading, text }) => ({ reading: reading.id, text })),
    faults: faultStandings(session).map(({ fault, state, contradictions }) => ({
      fault: fault.id,
      is: fault.is,
      state,
      ruledOutBy: contradictions,
    })),
    openWork: openWorkOf(session.entries).map(({ text, entry }) => ({ entry: entry + 1, text })),
    path: pathOf(session.position).map(({ id }) => id),
  };
}

export type JobStanding = ReturnType<typeof standingOf>;

function knownText({ observation, given, bands }: Known): { value: string; plusMinus: string | null } {
  if (observation === null) {
    const ended = bands.length === 0 ? 'not read' : 'end of the procedure';
    return { value: given ? 'part of the symptom' : ended, plusMinus: null };
  }
  const { doubt } = observation;
  return {
    value: observationText(observation),
    plusMinus: doubt && printQuantity(doubt.plusMinus),
  };
}
