import { nameHere, type Session } from '../../engine/run/index.ts';
import type { Suspect } from '../../engine/run/suspects-of.ts';
import { factorWords } from '../../engine/suspects/move-words.ts';
import { bandWords } from './band-words.ts';

/** What one reading did to the odds of a suspect. */
export interface MoveLine {
  readonly reading: string;
  readonly is: string;
  /** What it showed: `weak`, `low or good`. */
  readonly showed: string;
  /** `×9`, `over ×10000` */
  readonly times: string;
  readonly way: 'for' | 'against';
  /** Entry to take again; null where there is none. */
  readonly entry: number | null;
}

export interface MoveLines {
  /** Strongest first. */
  readonly lines: readonly MoveLine[];
  /** How many more readings hardly moved it. */
  readonly quiet: number;
}

/** A factor between 0.91 and 1.1 moves nobody's mind. */
const least = Math.log(1.1);

/** Which readings moved a suspect, and by how much. */
export function moveLines(session: Session, { moves }: Suspect): MoveLines {
  const telling = moves
    .filter(({ logOdds }) => Math.abs(logOdds) >= least)
    .toSorted((a, b) => Math.abs(b.logOdds) - Math.abs(a.logOdds));
  return {
    lines: telling.map((move) => lineOf(session, move)),
    quiet: moves.length - telling.length,
  };
}

/** What speaks against a suspect, the strongest first. */
export const movesAgainst = (session: Session, suspect: Suspect): readonly MoveLine[] =>
  moveLines(session, suspect).lines.filter(({ way }) => way === 'against');

function lineOf(session: Session, { reading, bands, logOdds, entry }: Suspect['moves'][number]): MoveLine {
  return {
    reading,
    is: nameHere(session, reading),
    showed: bandWords(session.loaded.readings.get(reading), bands),
    times: factorWords(logOdds).replace(/\d/, '×$&'),
    way: logOdds > 0 ? 'for' : 'against',
    entry,
  };
}
