import type { Reading } from '../model/reading.ts';
import type { SettingValue } from '../model/setting.ts';
import { settingsOf } from '../scale/index.ts';
import { type Evidence, type Standing, standings } from '../suspects/standings.ts';
import type { Session } from './session.ts';
import { wordsOn } from './words-on.ts';

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
  return session.loaded.tree.readings.flatMap((reading) => {
    const words = wordsOn(session, reading.id);
    const known = mended ? words.findLast((word) => word.remedies < remedies.length) : words.at(-1);
    if (known === undefined || known.stale || known.bands.length === 0) return [];
    if (reading.from !== null && !isComputedAsUsual(session, reading)) return [];
    const alsoPresent = remedies
      .slice(known.remedies)
      .filter(({ effect }) => effect !== 'no effect')
      .map(({ fault }) => fault);
    return [{ reading: reading.id, bands: known.bands, board: known.board, alsoPresent }];
  });
}

/** What faults show in a derived reading is worked out at the usual settings: at others it is no evidence for or against. */
const isComputedAsUsual = (session: Session, reading: Reading): boolean =>
  settingsOf(reading).every((name) => {
    const setting = session.loaded.settings.get(name);
    return setting === undefined || isSame(session.settings.get(name) ?? null, setting.usual);
  });

const isSame = (a: SettingValue | null, b: SettingValue | null): boolean =>
  a === null || b === null || typeof a === 'string' || typeof b === 'string' ? a === b : a.value === b.value;
