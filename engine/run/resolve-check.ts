import type { Box } from '../combinations/box.ts';
import { firstMatches } from '../combinations/first-matches.ts';
import type { MachineEvent } from '../model/machine.ts';
import type { CheckSection } from '../model/section.ts';
import { bandsOf } from '../scale/index.ts';
import type { OpenWay } from './question.ts';
import type { Session } from './session.ts';

/** Where a finished check leads: one event, or several ways that the readings leave open. */
export type Way =
  | { readonly kind: 'one'; readonly target: string; readonly event: MachineEvent }
  | { readonly kind: 'open'; readonly ways: readonly OpenWay[] };

/** First match over sets of bands. A reading that could not be read, is untidy or has not been taken
 *  yet may be in several bands; a setting that is not known may be any of its options. */
export function resolveCheck(session: Session, extra: Box = {}): Way {
  const section = session.position.section as CheckSection;
  const lines = section.outcomes.filter(({ condition }) => condition.kind !== 'unread');
  const from = possible(session, section, extra);
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
  if (unread !== undefined && somethingUnread(session, section)) {
    return { kind: 'one', target: unread.target, event: { type: 'unread' } };
  }
  return { kind: 'open', ways: distinct };
}

const firstOf = (box: Box): Record<string, string> =>
  Object.fromEntries(Object.entries(box).map(([name, bands]) => [name, bands[0] ?? '']));

const somethingUnread = (session: Session, section: CheckSection): boolean =>
  section.readings.some((id) => session.position.taken.get(id)?.length === 0);

function possible(session: Session, section: CheckSection, extra: Box): Box {
  const box: Record<string, readonly string[]> = {};
  for (const [id, setting] of session.loaded.settings) {
    if (setting.kind !== 'options') continue;
    const value = session.settings.get(id);
    box[id] = typeof value === 'string' ? [value] : setting.options.map(({ name }) => name);
  }
  for (const id of section.readings) {
    const reading = session.loaded.readings.get(id);
    const bands = extra[id] ?? session.position.taken.get(id) ?? [];
    if (reading !== undefined) box[id] = bands.length > 0 ? bands : bandsOf(reading);
  }
  return box;
}
