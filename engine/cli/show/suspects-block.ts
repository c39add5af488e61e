import { wrap } from '../../prose/plain-text.ts';
import { nameHere, type Session } from '../../run/index.ts';
import { type Suspect, type Suspects, suspectsOf } from '../../run/suspects-of.ts';
import { mostMoved } from '../../suspects/most-moved.ts';
import { moveWords } from '../../suspects/move-words.ts';
import { perCent } from '../../suspects/per-cent.ts';
import { shortReading } from '../../suspects/short-reading.ts';
import { suspectName } from '../../suspects/suspect-name.ts';

/** So many are named, those that can be told from nothing. */
const most = 6;
const least = 0.01;
/** Of what moved a suspect, so many readings are named. */
const mostMoves = 3;

/** The suspects, likeliest first, each with the readings that moved it most and the factor of its odds; before them, where no
 *  fault explains what was read, that this is so. */
export function suspectsBlock(session: Session, { ranked, fits }: Suspects, width: number): string {
  const named = ranked.slice(0, most).filter(({ share }, at) => at === 0 || share >= least);
  const rest = ranked.slice(named.length);
  const left = rest.reduce((sum, { share }) => sum + share, 0);
  return [
    'Suspects',
    ...(fits ? [] : [wrap(unfit, width)]),
    ...named.flatMap((suspect) => suspectLines(session, suspect, width)),
    ...(rest.length === 0 ? [] : [`  ${perCent(left).padStart(6)}  ${rest.length} more`]),
  ].join('\n');
}

/** Said before anything else, where it is so. */
export const unfitLine = (session: Session, width: number): string =>
  suspectsOf(session).fits ? '' : wrap(unfit, width);

const unfit =
  'These readings fit no fault in this tree. Take the odd one again, look whether it was the right point; else it is a fault that nobody wrote down.';

function suspectLines(session: Session, { faults, share, moves }: Suspect, width: number): readonly string[] {
  const moved = mostMoved(moves, mostMoves).map((move) =>
    moveWords(move, shortReading(nameHere(session, move.reading))),
  );
  const head = `  ${perCent(share).padStart(6)}  `;
  return [
    indented(head, suspectName(faults), width),
    ...(moved.length === 0 ? [] : [indented(' '.repeat(head.length + 2), moved.join('; '), width)]),
  ];
}

/** A text that goes on under its own beginning. */
const indented = (head: string, text: string, width: number): string =>
  head + wrap(text, width - head.length).replaceAll('\n', `\n${' '.repeat(head.length)}`);
