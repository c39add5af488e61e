import type { Share } from '../model/fault.ts';
import type { Path } from '../model/front-matter.ts';
import type { FactsContext } from './facts-context.ts';
import { isTable, type RawTable, textsOf } from './raw.ts';

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
    const raw = table[band];
    const text = typeof raw === 'string' ? raw : '';
    const [, digits] = /^(\d{1,3}(?:\.\d{1,9})?)\s*%$/.exec(text) ?? [];
    const known = has(band, place, 'key');
    if (digits === undefined && text !== '') shareForm(text, place, context);
    if (digits !== undefined && known) return [{ band, percent: Number(digits) }];
    sound = false;
    return [];
  });
  const sum = percents.reduce((total, { percent }) => total + percent, 0);
  if (sound && Math.abs(sum - 100) > 1e-6) {
    context.atValue(path, { code: 'shares-sum', sum: String(Number(sum.toFixed(9))) });
  }
  return percents.map(({ band, percent }) => ({ band, share: sum > 0 ? percent / sum : 0 }));
}

function shareForm(text: string, path: Path, context: FactsContext): void {
  const { to } = context.spanOf(path);
  // Below 2 it may be meant as a part of 1.
  const isPercentage = /^\d{1,3}(?:\.\d+)?$/.test(text) && Number(text) >= 2;
  const fix = { title: `Write "${text} %"`, edits: [{ from: to, to, insert: ' %' }] };
  context.atValue(path, { code: 'share-form', text }, isPercentage ? { fix } : {});
}
