import type { Box } from '../combinations/box.ts';
import { firstMatches } from '../combinations/first-matches.ts';
import type { MachineEvent } from '../model/machine.ts';
import type { Observation } from '../model/observation.ts';
import type { CheckSection } from '../model/section.ts';
import { bandsOf } from '../scale/index.ts';
import { derivedNow } from './derived-now.ts';
import type { OpenWay } from './question.ts';
import { readingsOf } from './readings-of.ts';
import { latest, type Session } from './session.ts';

/** Where a finished check leads: one event, or several ways that the readings leave open. */
export type Way =
  | { readonly kind: 'one'; readonly target: string; readonly event: MachineEvent }
  | { readonly kind: 'open'; readonly ways: readonly OpenWay[] };

/** First match over sets of bands. A reading that could not be read, is untidy or has not been taken
 *  yet may be in several bands; a setting that is not known may be any of its options.
 *  @param supposed observations that have not been entered yet, by reading */
export function resolveCheck(session: Session, supposed: Supposed = {}): Way {
  const section = session.position.section as CheckSection;
  const lines = section.outcomes.filter(({ condition }) => condition.kind !== 'unread');
  const from = possible(session, section, supposed);
  const { taken } = firstMatches(
    from,
    lines.map(({ condition }) => (condition.kind === 'bands' ? condition.bands : null)),
  );
  const ways = lines.flatMap(({ target }, index) => {
    const box = taken[index];
    return box === null || box === undefined ? [] : [{ target, bands: firstOf(box) }];
  });
  const distinct = ways.filter(
    (way, index) => ways.findIndex(({ target }) => target === way.target) === index,
  );
  const [only] = distinct;
  if (only !== undefined && distinct.length === 1) {
    return { kind: 'one', target: only.target, event: { type: 'checked', bands: only.bands } };
  }
  const unread = section.outcomes.find(({ condition }) => condition.kind === 'unread');
  if (unread !== undefined && somethingUnread(session, section, supposed)) {
    return { kind: 'one', target: unread.target, event: { type: 'unread' } };
  }
  return { kind: 'open', ways: distinct };
}

type Supposed = Readonly<Record<string, Observation>>;

const firstOf = (box: Box): Record<string, string> =>
  Object.fromEntries(Object.entries(box).map(([name, bands]) => [name, bands[0] ?? '']));

/** What is computed counts as not read once everything is taken that could have made it known. */
function somethingUnread(session: Session, section: CheckSection, supposed: Supposed): boolean {
  const bands = section.readings.map((id) => bandsNow(session, id, supposed));
  const asked = readingsOf(session).map((id) => bandsNow(session, id, supposed));
  return asked.some((known) => known?.length === 0) || (!asked.includes(null) && bands.some(isUnread));
}

const isUnread = (bands: readonly string[] | null): boolean => bands?.length === 0;

/** The bands a reading can be in at this visit: none where it could not be read, null where it has not been taken yet. */
function bandsNow(session: Session, id: string, supposed: Supposed): readonly string[] | null {
  const reading = session.loaded.readings.get(id);
  if (reading?.call) return latest(session, id)?.bands ?? [];
  if (reading === undefined || reading.from === null) {
    return supposed[id]?.bands ?? session.position.taken.get(id) ?? null;
  }
  const { observation, unknown } = derivedNow(session, reading, supposed);
  return unknown ? [] : observation.bands;
}

function possible(session: Session, section: CheckSection, supposed: Supposed): Box {
  const box: Record<string, readonly string[]> = {};
  for (const [id, setting] of session.loaded.settings) {
    if (setting.kind !== 'options') continue;
    const value = session.settings.get(id);
    box[id] = typeof value === 'string' ? [value] : setting.options.map(({ name }) => name);
  }
  for (const id of section.readings) {
    const reading = session.loaded.readings.get(id);
    const bands = bandsNow(session, id, supposed) ?? [];
    if (reading !== undefined) box[id] = bands.length > 0 ? bands : bandsOf(reading);
  }
  return box;
}
