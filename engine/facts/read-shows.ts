import type { Share, Shows } from '../model/fault.ts';
import type { Path } from '../model/front-matter.ts';
import type { Reading } from '../model/reading.ts';
import { bandsOf, memberReading } from '../scale/index.ts';
import { checkBand } from './check-band.ts';
import type { FactsContext } from './facts-context.ts';
import { findReading, type Readings } from './find-reading.ts';
import { isTable, oneOrMore, tableOf } from './raw.ts';
import { readMembersShown, saysHowMany } from './read-members-shown.ts';
import { readShares } from './read-shares.ts';

/** What a fault shows: `{ v5: low, lines: { one: stuck }, r_gnd of v5: short }`. */
export function readShows(
  raw: unknown,
  path: Path,
  readings: Readings,
  context: FactsContext,
): readonly Shows[] {
  const table = tableOf(raw);
  return context.keysOf(path, table).flatMap((name): readonly Shows[] => {
    const place = [...path, name];
    const reading = findReading(name, readings, place, 'key', context);
    if (reading === null) return [];
    const shares = sharesOf(reading, table[name], place, context);
    return shares.length === 0 ? [] : [{ reading: name, shares }];
  });
}

function sharesOf(reading: Reading, raw: unknown, path: Path, context: FactsContext): readonly Share[] {
  const { measure } = reading;
  if (measure.kind === 'each') {
    if (isTable(raw) && saysHowMany(raw)) return readMembersShown(reading, measure, raw, path, context);
    const ofOne = bandsOf(memberReading(reading));
    const bands = oneOrMore(raw).filter((band) => ofOne.includes(band) && !measure.bands.includes(band));
    if (bands.length > 0) {
      context.atValue(path, { code: 'shows-how-many', reading: reading.id, bands });
      return [];
    }
  }
  const has = (band: string, at: Path, part: 'key' | 'value') => checkBand(reading, band, at, part, context);
  return readShares(raw, path, has, context);
}
