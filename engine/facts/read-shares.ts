import type { Share } from '../model/fault.ts';
import type { Path } from '../model/front-matter.ts';
import type { FactsContext } from './facts-context.ts';
import { isTable, type RawTable, textsOf } from './raw.ts';
import { readPercent } from './read-percent.ts';

type HasBand = (band: string, path: Path, part: 'key' | 'value') => boolean;

/** `low`, `[low, none]` in equal shares, or `{ low: 70 %, none: 30 % }`. */
export function readShares(raw: unknown, path: Path, has: HasBand, context: FactsContext): readonly Share[] {
  if (typeof raw === 'string') return raw !== '' && has(raw, path, 'value') ? [{ band: raw, share: 1 }] : [];
  if (isTable(raw)) return writtenShares(raw, path, has, context);
  const bands = new Set(textsOf(raw).filter((band, index) => has(band, [...path, index], 'value')));
  return [...bands].map((band) => ({ band, share: 1 / bands.size }));
}

function writtenShares(table: RawTable, path: Path, has: HasBand, context: FactsContext): readonly Share[] {
  let sound = true;
  const percents = context.keysOf(path, table).flatMap((band) => {
    const place = [...path, band];
    const known = has(band, place, 'key');
    const percent = readPercent(table[band], place, context);
    if (percent !== null && known) return [{ band, percent }];
    sound = false;
    return [];
  });
  const sum = percents.reduce((total, { percent }) => total + percent, 0);
  if (sound && Math.abs(sum - 100) > 1e-6) {
    context.atValue(path, { code: 'shares-sum', sum: String(Number(sum.toFixed(9))) });
  }
  return percents.map(({ band, percent }) => ({ band, share: sum > 0 ? percent / sum : 0 }));
}
