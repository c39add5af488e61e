import type { CodeRange, Measure } from '../model/reading.ts';
import type { TextProblem } from '../model/text-problem.ts';
import { otherBand } from './band-of-code.ts';
import { isWord } from './typed/read-code.ts';

/** One row of a `codes` table as written: `10-1F: video`. */
export interface CodeEntry {
  /** A code, a run of codes (`01..1F`, `01-1F`), or `none` or `blank` for a dark display. */
  readonly key: string;
  readonly band: string;
  readonly means: string | null;
}

interface ParsedCodes {
  readonly measure: Extract<Measure, { kind: 'codes' }>;
  /** Places count in the key of entry `entry`. */
  readonly problems: readonly CodeProblem[];
}

interface CodeProblem {
  readonly entry: number;
  readonly problem: TextProblem;
}

/** A row that holds codes: its place among the entries and how it was written. */
interface Placed {
  readonly entry: number;
  readonly key: string;
}

/** The codes of a reading. What no row lists is in the built-in last band `other`. */
export function parseCodes(entries: readonly CodeEntry[]): ParsedCodes {
  const problems: CodeProblem[] = [];
  const ranges: CodeRange[] = [];
  const placed: Placed[] = [];
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
    placed.push({ entry, key });
    ranges.push({ from, to, band, means });
  }
  problems.push(...overlaps(ranges, placed));
  const bands = [...new Set(ranges.map(({ band }) => band).filter((band) => band !== otherBand)), otherBand];
  return { measure: { kind: 'codes', digits: digits ?? 2, ranges, bands }, problems };
}

/** In ascending order, a run overlaps an earlier one if it begins before the furthest end so far. */
function overlaps(ranges: readonly CodeRange[], placed: readonly Placed[]): readonly CodeProblem[] {
  const problems: CodeProblem[] = [];
  const order = [...ranges.keys()].sort((a, b) =>
    (ranges[a]?.from ?? '') < (ranges[b]?.from ?? '') ? -1 : 1,
  );
  let furthest: number | undefined;
  for (const next of order) {
    const end = furthest === undefined ? undefined : ranges[furthest];
    const range = ranges[next];
    if (range === undefined) continue;
    if (furthest !== undefined && end !== undefined && range.from <= end.to) {
      const [first, second] = [furthest, next].sort((a, b) => a - b).map((at) => placed[at]);
      const key = second?.key ?? '';
      const facts = { code: 'code-overlap', found: key, other: first?.key ?? '' } as const;
      problems.push({ entry: second?.entry ?? 0, problem: { from: 0, to: key.length, ...facts } });
    }
    if (end === undefined || range.to > end.to) furthest = next;
  }
  return problems;
}

function endsOf(key: string): readonly [string, string] | null {
  const text = key.trim();
  if (isWord(text)) return [text.toLowerCase(), text.toLowerCase()];
  const [, from = '', to = from] =
    /^([\da-f]{1,8})(?:\s*(?:\.{2,3}|…|-|–)\s*([\da-f]{1,8}))?$/i.exec(text) ?? [];
  const [a, b] = [from.toUpperCase(), to.toUpperCase()];
  return from !== '' && a.length === b.length && a <= b ? [a, b] : null;
}
