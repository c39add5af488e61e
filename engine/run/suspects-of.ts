import type { Fault } from '../model/fault.ts';
import type { Belief } from '../suspects/belief.ts';
import { believe } from '../suspects/believe.ts';
import { fitsOf } from '../suspects/fits-of.ts';
import { type Move, movesOf } from '../suspects/moves-of.ts';
import type { Sighting } from '../suspects/sighting.ts';
import type { Session } from './session.ts';
import { sightingsOf } from './sightings-of.ts';

/** What a board may have, and how likely that is. */
export interface Suspect {
  /** One, two at once, or none that the tree lists. */
  readonly faults: readonly Fault[];
  readonly share: number;
  /** Which reading moved it, and how far; worked out when it is asked for. */
  readonly moves: readonly Move[];
}

export interface Suspects {
  /** The likeliest first. */
  readonly ranked: readonly Suspect[];
  /** False: what was read fits no fault of the tree. To be said before anything else. */
  readonly fits: boolean;
  readonly belief: Belief;
  readonly sightings: readonly Sighting[];
}

const known = new WeakMap<Session, Suspects>();

/** What the board is suspected of as the job stands. Faults that were mended or put aside are not among them, but for the one whose remedy
 *  waits for its proof or has passed it. Two at once are among them once a proof has failed. */
export function suspectsOf(session: Session): Suspects {
  const before = known.get(session);
  if (before !== undefined) return before;
  const made = weigh(session);
  known.set(session, made);
  return made;
}

function weigh(session: Session): Suspects {
  const { loaded, position, settings } = session;
  const failed = position.remedies.filter(
    ({ effect }) => effect === 'more is wrong' || effect === 'no effect',
  );
  const found = failed.filter(({ effect }) => effect === 'more is wrong').map(({ fault }) => fault);
  const sightings = sightingsOf(session);
  const belief = believe(loaded.tree, sightings, {
    boardClass: classOf(session),
    aside: new Set([...position.declined, ...failed.map(({ fault }) => fault)]),
    mended: new Set(found),
    pairs: failed.length > 0,
    settings,
  });
  const ranked = belief.hypotheses
    .map(({ faults }, place) => suspectAt(belief, place, faults))
    .sort((a, b) => b.share - a.share);
  return { ranked, fits: sightings.length === 0 || fitsOf(belief), belief, sightings };
}

const suspectAt = (belief: Belief, place: number, faults: readonly Fault[]): Suspect => ({
  faults,
  share: belief.shares[place] ?? 0,
  get moves() {
    return movesOf(belief, place);
  },
});

/** The class of the board on the bench, where its sheet names one that the tree tells apart. */
function classOf({ board, loaded }: Session): string | null {
  return board?.boards.find((name) => loaded.tree.faults.some(({ weights }) => name in weights)) ?? null;
}
