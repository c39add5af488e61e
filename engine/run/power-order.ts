import { dimensionOf, fits } from '../formula/index.ts';
import type { Need, Reading } from '../model/reading.ts';
import { knownNow } from './known-now.ts';
import { mustPass } from './must-pass.ts';
import { readIn } from './read-in.ts';
import type { Session } from './session.ts';

/** Whether the power may be on for a reading: every resistance that the tree demands before it, before what it rests on, or
 *  before what every way to its section passes, has been seen on the board as it is, and is as it is demanded.
 *  @param needs what must have been seen for the tasks on the way to it */
export function isPowerSafe(
  session: Session,
  reading: Reading,
  section: string,
  needs: readonly Need[],
): boolean {
  if (reading.power !== 'on') return true;
  return ohmsBefore(session, reading, section, needs).every(({ reading: id, bands }) => {
    const known = knownNow(session, id)?.bands ?? [];
    return known.length > 0 && (bands === null || known.every((band) => bands.includes(band)));
  });
}

/** A resistance to be seen, in one of `bands`; null where it only has to be seen. */
export interface Demand {
  readonly reading: string;
  readonly bands: readonly string[] | null;
}

/** The resistances that the tree demands before the power may be on for a reading in a section. */
export function ohmsBefore(
  { loaded }: Pick<Session, 'loaded'>,
  reading: Reading,
  section: string,
  needs: readonly Need[],
): readonly Demand[] {
  const demands: Demand[] = [];
  const seen = new Set<string>();
  const visit = (id: string, bands: readonly string[] | null): void => {
    const found = loaded.readings.get(id);
    if (found === undefined) return;
    if (isOhms(found) && readIn(loaded.tree).has(id)) demands.push({ reading: id, bands });
    if (seen.has(id)) return;
    seen.add(id);
    visitBefore(found);
  };
  const visitBefore = ({ onlyIf, after, needs: behind }: Reading): void => {
    for (const need of onlyIf) visit(need.reading, need.bands);
    for (const id of after) visit(id, null);
    for (const need of behind) visit(need.reading, null);
  };
  visitBefore(reading);
  for (const need of needs) visit(need.reading, need.bands);
  for (const passed of mustPass(loaded.tree).get(section) ?? []) {
    const before = loaded.sections.get(passed);
    if (before?.kind === 'task') for (const need of before.onlyIf) visit(need.reading, need.bands);
    const taken =
      before?.kind === 'check' ? before.readings.flatMap((id) => loaded.readings.get(id) ?? []) : [];
    for (const { onlyIf, after } of taken) {
      for (const need of onlyIf) visit(need.reading, need.bands);
      for (const id of after) visit(id, null);
    }
  }
  return demands;
}

function isOhms({ power, measure }: Reading): boolean {
  const one = measure.kind === 'each' ? measure.of : measure;
  return power === 'off' && one.kind === 'quantity' && fits(dimensionOf(one.unit), dimensionOf('Ω'));
}
