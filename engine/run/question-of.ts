import type { CheckSection, FaultSection } from '../model/section.ts';
import { hazardsDue } from './hazards-due.ts';
import { remedyNumber } from './position.ts';
import type { Question } from './question.ts';
import { resolveCheck } from './resolve-check.ts';
import { latest, type Session } from './session.ts';
import { readingsOf } from './take-reading.ts';

/** What the session waits for now. */
export function questionOf(session: Session): Question {
  return (
    closedQuestion(session) ?? openingQuestion(session) ?? hazardQuestion(session) ?? sectionQuestion(session)
  );
}

function closedQuestion({ closed }: Session): Question | null {
  return closed === null ? null : { ask: 'nothing', mended: closed.mended };
}

function openingQuestion(session: Session): Question | null {
  if (!session.opened) return { ask: 'opening' };
  const { settings, given } = session.loaded.tree;
  const setting = settings.find(({ id }) => !session.settings.has(id));
  if (setting !== undefined) return { ask: 'setting', setting };
  return given.length > 0 && session.symptom === null ? { ask: 'symptom', given } : null;
}

function hazardQuestion(session: Session): Question | null {
  const due = hazardsDue(session);
  return due === null ? null : { ask: 'acknowledgement', ...due };
}

function sectionQuestion(session: Session): Question {
  const { section, phase, waitingSince } = session.position;
  if (section === null) return { ask: 'closing' };
  switch (section.kind) {
    case 'check':
      return readingQuestion(session, section, 'check') ?? tooClose(session, section);
    case 'task':
      return { ask: 'task', section, waitingSince };
    case 'stop':
      return { ask: 'stop', section };
    case 'fault':
      return faultQuestion(session, section, phase ?? 'aside');
  }
}

function faultQuestion(session: Session, section: FaultSection, phase: string): Question {
  if (phase.startsWith('proof')) {
    return readingQuestion(session, section, 'proof') ?? { ask: 'aside', section };
  }
  const remedy = section.remedies[remedyNumber(phase)];
  const fault = remedy === undefined ? undefined : session.loaded.faults.get(remedy.fault);
  if (phase === 'aside' || remedy === undefined || fault === undefined) return { ask: 'aside', section };
  return { ask: 'remedy', section, fault, remedy };
}

function readingQuestion(
  session: Session,
  section: CheckSection | FaultSection,
  purpose: 'check' | 'proof',
): Question | null {
  const ids = readingsOf(session);
  const at = ids.findIndex((id) => !session.position.taken.has(id));
  const reading = session.loaded.readings.get(ids[at] ?? '');
  if (reading === undefined) return null;
  const known = latest(session, reading.id);
  return { ask: 'reading', section, reading, purpose, place: { at: at + 1, of: ids.length }, known };
}

function tooClose(session: Session, section: CheckSection): Question {
  const way = resolveCheck(session);
  return { ask: 'too-close', section, ways: way.kind === 'open' ? way.ways : [] };
}
