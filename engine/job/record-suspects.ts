import type { JobRecord } from '../model/record.ts';
import { nameHere, type Session } from '../run/index.ts';
import { suspectsOf } from '../run/suspects-of.ts';
import { mostMoved } from '../suspects/most-moved.ts';
import { moveWords } from '../suspects/move-words.ts';
import { shortReading } from '../suspects/short-reading.ts';
import { suspectName } from '../suspects/suspect-name.ts';

/** So many are worth writing down, those that can be told from nothing. */
const most = 5;
const least = 0.02;
const mostMoves = 3;

/** What the board is suspected of as the job stands; null where a fault was proved. */
export function recordSuspects(session: Session): JobRecord['suspects'] {
  if (session.closed?.mended === true || session.position.section === null) return null;
  const { ranked, fits } = suspectsOf(session);
  const named = ranked.slice(0, most).filter(({ share }) => share >= least);
  return {
    fits,
    ranked: named.map(({ faults, share, moves }) => ({
      faults: faults.map(({ id }) => id),
      is: suspectName(faults),
      share,
      moved: mostMoved(moves, mostMoves)
        .map((move) => moveWords(move, shortReading(nameHere(session, move.reading))))
        .join('; '),
    })),
  };
}
