import type { CodeRange, Measure } from '../model/reading.ts';
import type { TextProblem } from '../model/text-problem.ts';
import { otherBand } from './band-of-code.ts';
import { isWord } from './read-code.ts';

/** One row of a `codes` table as written: `10-1F: video`. */
export interface CodeEntry {
  /** A code, a run of codes (`01..1F`, `01-1F`), or `none` or `blank` for a dark display. */
  readonly key: string;
  readonly band: string;
  readonly means: string | null;
}

export interface ParsedCodes {
  readonly measure: Extract<Measure, { kind: 'codes' }>;
  /** Places count in the key of entry `entry`. */
  readonly problems: readonly { readonly entry: number; readonly problem: TextProblem }[];
}

/** The codes of a reading. What no row lists is in the built-in last band `other`. */
export function parseCodes(entries: readonly CodeEntry[]): ParsedCodes {
  const problems: { entry: number; problem: TextProblem }[] = [];
  const ranges: CodeRange[] = [];
  let digits: number | null = null;
  for (const [entry, { key, band, means }] of entries.entries()) {
    const place = { from: 0, to: key.length };
    const ends = endsOf(key);
    const size: number | null = ends === null ? null : isWord(ends[0]) ? digits : ends[0].length;
    if (ends === null || (digits !== null && size !== digits)) {
      problems.push({ entry, problem: { ...place, code: 'code-shape', found: key, digits } });
      continue;
    }
    digits = size;
    const [from, to] = ends;
    const other = ranges.find(
      (range) => range.from.length === from.length && range.from <= to && from <= range.to,
    );
    if (other)
      problems.push({ entry, problem: { ...place, code: 'code-overlap', found: key, other: print(other) } });
    ranges.push({ from, to, band, means });
  }
  const bands = [...new Set(ranges.map(({ band }) => band).filter((band) => band !== otherBand)), otherBand];
  return { measure: { kind: 'codes', digits: digits ?? 2, ranges, bands }, problems };
}

function endsOf(key: string): readonly [string, string] | null {
  const text = key.trim();
  if (isWord(text)) return [text.toLowerCase(), text.toLowerCase()];
  const [, from = '', to = from] =
    /^([\da-f]{1,8})(?:\s*(?:\.{2,3}|…|-|–)\s*([\da-f]{1,8}))?$/i.exec(text) ?? [];
  const [a, b] = [from.toUpperCase(), to.toUpperCase()];
  return from !== '' && a.length === b.length && a <= b ? [a, b] : null;
}

const print = ({ from, to }: CodeRange): string => (from === to ? from : `${from}-${to}`);
