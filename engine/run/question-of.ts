import { settlers } from '../doubt/index.ts';
import type { CheckSection, FaultSection, HandOverSection, TaskSection } from '../model/section.ts';
import { memberReading, resolveScale } from '../scale/index.ts';
import { changesFor } from './changes-for.ts';
import { hazardsDue } from './hazards-due.ts';
import { lackingFor } from './lacking-for.ts';
import { needsOfWork } from './needs-of-work.ts';
import { nextTree } from './next-tree.ts';
import { openingQuestion } from './opening-question.ts';
import { remedyNumber } from './position.ts';
import type { Question, Unsettled } from './question.ts';
import { readingAsked } from './reading-asked.ts';
import { readingHere } from './reading-here.ts';
import { resolveCheck } from './resolve-check.ts';
import { latest, type Session } from './session.ts';

/** What the session waits for now. */
export function questionOf(session: Session): Question {
  return (
    closedQuestion(session) ?? openingQuestion(session) ?? hazardQuestion(session) ?? sectionQuestion(session)
  );
}

function closedQuestion({ closed }: Session): Question | null {
  return closed === null ? null : { ask: 'nothing', mended: closed.mended };
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
      return readingQuestion(session) ?? tooClose(session, section);
    case 'task':
      return heldWork(session, section) ?? { ask: 'task', section, waitingSince };
    case 'call':
      return { ask: 'call', section };
    case 'hand-over':
      return handOver(session, section);
    case 'stop':
      return { ask: 'stop', section };
    case 'fault':
      return faultQuestion(session, section, phase ?? 'aside');
  }
}

function faultQuestion(session: Session, section: FaultSection, phase: string): Question {
  if (phase.startsWith('proof')) return readingQuestion(session) ?? { ask: 'aside', section };
  const remedy = section.remedies[remedyNumber(phase)];
  const fault = remedy === undefined ? undefined : session.loaded.faults.get(remedy.fault);
  if (phase === 'aside' || remedy === undefined || fault === undefined) return { ask: 'aside', section };
  return heldWork(session, section) ?? { ask: 'remedy', section, fault, remedy };
}

/** A reading is held back until what must be seen before it was seen, and then until the board is in its conditions. */
function readingQuestion(session: Session): Question | null {
  const asked = readingAsked(session);
  if (asked === null) return null;
  const { section, reading, known } = asked;
  const lacking = session.position.overridden.has(reading.id) ? [] : lackingFor(session, reading.onlyIf);
  if (lacking.length > 0) return { ask: 'held', section, reading, lacking };
  const changes = changesFor(session, reading);
  return changes.length > 0 ? { ask: 'arrange', section, reading, changes, known } : asked;
}

function heldWork(session: Session, section: FaultSection | TaskSection): Question | null {
  if (session.position.overridden.has('')) return null;
  const lacking = lackingFor(session, needsOfWork(session));
  return lacking.length === 0 ? null : { ask: 'held', section, reading: null, lacking };
}

const handOver = (session: Session, section: HandOverSection): Question => ({
  ask: 'hand-over',
  section,
  tree: nextTree(session, section.tree),
});

function tooClose(session: Session, section: CheckSection): Question {
  const way = resolveCheck(session);
  const ways = way.kind === 'open' ? way.ways : [{ target: way.target, bands: bandsOfEvent(way.event) }];
  return { ask: 'too-close', section, ways, unsettled: unsettledIn(session, section) };
}

/** Only a check that leads back to itself by what it computes stands here with one way. */
const bandsOfEvent = (event: Extract<ReturnType<typeof resolveCheck>, { kind: 'one' }>['event']) =>
  event.type === 'checked' ? event.bands : {};

function unsettledIn(session: Session, section: CheckSection): readonly Unsettled[] {
  return section.readings.flatMap((id) => {
    const reading = readingHere(session, id);
    const bands = session.position.taken.get(id) ?? [];
    if (reading === undefined || bands.length < 2) return [];
    const observation = latest(session, id)?.observation ?? null;
    const by =
      observation === null
        ? []
        : settlers(reading, resolveScale(memberReading(reading), session), observation, session.equipment);
    return [{ reading, bands, by }];
  });
}
