import { shownBands } from '../suspects/shown-bands.ts';
import { move } from './move.ts';
import { pathOf } from './path-of.ts';
import type { DoneRemedy, Position } from './position.ts';
import { beforeRemedy, standing } from './proof-readings.ts';
import { latest, type Session } from './session.ts';

/** The proof of the present remedy is complete: either the board is mended, or the fault steps aside
 *  and the walk goes on from what is still wrong. */
export function finishProof(session: Session, readings: readonly string[]): Session {
  const bad = readings.filter(
    (id) => isJudged(session, id) && standing(session, id, latest(session, id)) !== 'normal',
  );
  if (bad.length === 0) return withEffect(move(session, { type: 'proved' }), 'mended');

  const effect = somethingMended(session, readings) ? 'more is wrong' : 'no effect';
  const failed = withEffect(move(withEffect(session, effect), { type: 'failed' }), effect);
  const nextSuspect = failed.position.phase?.startsWith('remedy') && effect === 'no effect';
  if (nextSuspect) return failed;
  const resume = pathOf(session.position).find(
    (section) =>
      section.kind === 'check' &&
      session.loaded.sections.get(section.id) === section &&
      section.readings.some((id) => bad.includes(id)),
  );
  return resume === undefined ? failed : move(failed, { type: 'go', section: resume.id });
}

const isJudged = (session: Session, reading: string): boolean =>
  session.loaded.readings.get(reading)?.normal !== 'any';

/** Whether a reading that this fault shows wrong was wrong before the remedy and is normal now. */
function somethingMended(session: Session, readings: readonly string[]): boolean {
  const { remedies } = session.position;
  const fault = session.loaded.faults.get(remedies.at(-1)?.fault ?? '');
  if (fault === undefined) return false;
  const shown = shownBands(session.loaded.tree, fault);
  return readings.some((id) => {
    const how = shown.get(id)?.how;
    return (
      (how === 'written' || how === 'hidden') &&
      standing(session, id, beforeRemedy(session, id)) === 'wrong' &&
      standing(session, id, latest(session, id)) === 'normal'
    );
  });
}

function withEffect(session: Session, effect: DoneRemedy['effect']): Session {
  const remedies = session.position.remedies.map((done, index, all) =>
    index === all.length - 1 ? { ...done, effect } : done,
  );
  const position: Position = { ...session.position, remedies };
  return { ...session, position };
}
