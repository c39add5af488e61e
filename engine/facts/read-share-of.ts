import type { Path } from '../model/front-matter.ts';
import type { FactsContext } from './facts-context.ts';
import { readPercent } from './read-percent.ts';

/** The percentages that make sense at one place: more than 0, and up to `most` or less than it. */
export interface ShareRange {
  readonly most: number;
  /** `most` itself is one of them. */
  readonly included: boolean;
}

/** A share that stands for itself, `5 %`, as 0.05; null where it is none or out of range, which is told. */
export function readShareOf(
  raw: unknown,
  path: Path,
  { most, included }: ShareRange,
  context: FactsContext,
): number | null {
  const percent = readPercent(raw, path, context);
  if (percent === null) return null;
  if (percent > 0 && (percent < most || (included && percent === most))) return percent / 100;
  const bound = `more than 0 % and ${included ? 'at most' : 'less than'} ${most} %`;
  context.atValue(path, { code: 'share-range', key: String(path.at(-1)), text: String(raw), bound });
  return null;
}
