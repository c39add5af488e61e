import { type Evidence, type Standing, standings } from '../suspects/standings.ts';
import type { Session } from './session.ts';

/** A fault with all that is known of it in this job. */
export interface FaultStanding extends Standing {
  readonly state: 'possible' | 'ruled out' | 'mended' | 'put aside';
}

/** Every fault of the tree: still possible, ruled out and by what, mended, or put aside. */
export function faultStandings(session: Session): readonly FaultStanding[] {
  const { remedies, declined } = session.position;
  const aside = [
    ...declined,
    ...remedies.filter(({ effect }) => effect === 'no effect').map(({ fault }) => fault),
  ];
  const mended = remedies.filter(({ effect }) => effect !== 'no effect').map(({ fault }) => fault);
  return standings(session.loaded.tree, evidenceOf(session)).map((standing) => ({
    ...standing,
    state: mended.includes(standing.fault.id)
      ? 'mended'
      : aside.includes(standing.fault.id)
        ? 'put aside'
        : standing.contradictions.length > 0
          ? 'ruled out'
          : 'possible',
  }));
}

/** What counts as evidence: the latest word on each reading, as long as the board is still the one it
 *  was taken on. What a mended board shows speaks against no fault. A fault mended since may have been behind an older reading as well. */
function evidenceOf(session: Session): readonly Evidence[] {
  const { remedies, section } = session.position;
  const mended = section === null;
  return [...session.history].flatMap(([reading, words]) => {
    const known = mended ? words.findLast((word) => word.remedies < remedies.length) : words.at(-1);
    if (known === undefined || known.stale || known.bands.length === 0) return [];
    const alsoPresent = remedies
      .slice(known.remedies)
      .filter(({ effect }) => effect !== 'no effect')
      .map(({ fault }) => fault);
    return [{ reading, bands: known.bands, board: known.board, alsoPresent }];
  });
}
