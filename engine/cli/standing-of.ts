import { openWorkOf } from '../job/index.ts';
import type { Job } from '../model/job.ts';
import {
  expectationOf,
  faultStandings,
  hazardsHere,
  latest,
  machineValue,
  pathOf,
  type Question,
  questionOf,
  type Session,
} from '../run/index.ts';
import { observationText } from '../scale/index.ts';

/** Where a job stands, as plain data: what `walk --json` prints. */
export function standingOf(job: Job, session: Session) {
  const question = questionOf(session);
  const { section, phase } = session.position;
  return {
    job: job.id,
    tree: { id: job.tree.id, title: job.tree.title, digest: job.tree.digest },
    entries: session.entries.length,
    machine: machineValue(session),
    section: section === null ? null : { id: section.id, title: section.title, kind: section.kind, phase },
    asks: askedOf(session, question),
    hazards: hazardsHere(session).map(({ word }) => word),
    settings: Object.fromEntries(session.settings),
    known: [...session.history.keys()].map((reading) => {
      const known = latest(session, reading);
      return {
        reading,
        value: known?.observation
          ? observationText(known.observation)
          : known?.given
            ? 'part of the symptom'
            : 'not read',
        bands: known?.bands ?? [],
        stale: known?.stale ?? false,
      };
    }),
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

function askedOf(session: Session, question: Question) {
  switch (question.ask) {
    case 'reading': {
      const { reading, purpose, place } = question;
      const { text, because, normal } = expectationOf(session, reading);
      return {
        ask: question.ask,
        reading: reading.id,
        is: reading.is,
        purpose,
        place,
        expected: text,
        because,
        normal,
      };
    }
    case 'setting':
      return { ask: question.ask, setting: question.setting.id, is: question.setting.is };
    case 'symptom':
      return { ask: question.ask, given: question.given };
    case 'too-close':
      return { ask: question.ask, ways: question.ways };
    case 'remedy':
      return { ask: question.ask, fault: question.fault.id, is: question.fault.is };
    case 'acknowledgement':
      return { ask: question.ask, hazards: question.hazards.map(({ word }) => word) };
    case 'nothing':
      return { ask: question.ask, mended: question.mended };
    default:
      return { ask: question.ask };
  }
}
