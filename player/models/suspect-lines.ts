import { faultStandings, type Session } from '../../engine/run/index.ts';
import type { Suspect, Suspects } from '../../engine/run/suspects-of.ts';
import { suspectNames } from './fault-name.ts';
import { type MoveLine, movesAgainst } from './move-lines.ts';
import { type ShareWords, shareWords } from './share-words.ts';

/** One suspect as it stands in the list. */
export interface SuspectLine extends ShareWords {
  /** Ids of its faults; empty for none of the tree's. */
  readonly id: string;
  /** Of two faults at once both are named. */
  readonly names: readonly string[];
  readonly share: number;
  readonly isNone: boolean;
  /** What speaks most against it, where nothing fits. */
  readonly against: MoveLine | null;
}

/** The suspects, likeliest first. */
export interface SuspectLines {
  readonly fits: boolean;
  /** Those worth a look, none of the tree's faults always among them. */
  readonly first: readonly SuspectLine[];
  /** Possible all the same; at most as likely as `restWords` says. */
  readonly rest: readonly SuspectLine[];
  readonly restWords: string;
  /** What fits the likeliest fault least: worth taking again where nothing fits. */
  readonly odd: MoveLine | null;
}

/** From this share on a suspect is worth a line of its own. */
const worthALine = 0.03;
const leastLines = 3;
const mostLines = 6;

export function suspectLines(session: Session, { ranked, fits }: Suspects): SuspectLines {
  const out = faultStandings(session).filter(({ state }) => state === 'ruled out');
  const isOut = new Set(out.map(({ fault }) => fault.id));
  const strictlyOut = ({ faults }: Suspect) => faults.length === 1 && faults.some(({ id }) => isOut.has(id));
  const faults = ranked.filter((one) => one.faults.length > 0);
  const open = faults.filter((one) => !strictlyOut(one) && one.faults.length === 1);
  const upFront = faults.filter(({ share }) => share >= worthALine);
  const lines = Math.max(leastLines, Math.min(upFront.length, mostLines));
  const filled = [...upFront, ...open.filter((one) => !upFront.includes(one))].slice(0, lines);
  const shown = new Set([...filled, ...ranked.filter((one) => one.faults.length === 0)]);
  const rest = open.filter((one) => !shown.has(one));
  const best = faults[0];
  return {
    fits,
    first: ranked
      .filter((one) => shown.has(one))
      .map((one) => lineOf(one, fits ? null : (movesAgainst(session, one)[0] ?? null))),
    rest: rest.map((one) => lineOf(one, null)),
    restWords: restWords(rest),
    odd: fits || best === undefined ? null : (movesAgainst(session, best)[0] ?? null),
  };
}

export const idOfSuspect = ({ faults }: Pick<Suspect, 'faults'>): string =>
  faults.map(({ id }) => id).join(' ');

const lineOf = (suspect: Suspect, against: MoveLine | null): SuspectLine => ({
  id: idOfSuspect(suspect),
  names: suspectNames(suspect.faults),
  share: suspect.share,
  isNone: suspect.faults.length === 0,
  against,
  ...shareWords(suspect.share),
});

function restWords(rest: readonly Suspect[]): string {
  const most = Math.max(0, ...rest.map(({ share }) => share));
  const { words } = shareWords(most);
  return `${rest.length} more, ${rest.length > 1 ? 'each ' : ''}${words}${
    rest.length > 1 && !words.startsWith('under') ? ' or less' : ''
  }`;
}
