import type { BeepPattern, Measure } from '../model/reading.ts';
import type { TextProblem } from '../model/text-problem.ts';
import { otherBand } from './band-of-code.ts';
import { beepPattern } from './beep-pattern.ts';

/** One row of a `beeps` table as written: `long short short: video`. */
interface BeepEntry {
  readonly key: string;
  readonly band: string;
  readonly means: string | null;
}

interface ParsedBeeps {
  readonly measure: Extract<Measure, { kind: 'beeps' }>;
  /** Places count in the key of entry `entry`. */
  readonly problems: readonly { readonly entry: number; readonly problem: TextProblem }[];
}

/** The beep patterns of a reading. What no row lists is in the built-in last band `other`. */
export function parseBeeps(entries: readonly BeepEntry[]): ParsedBeeps {
  const problems: { entry: number; problem: TextProblem }[] = [];
  const patterns = new Map<string, BeepPattern>();
  const written = new Map<string, string>();
  for (const [entry, { key, band, means }] of entries.entries()) {
    const place = { from: 0, to: key.length };
    const pattern = beepPattern(key);
    const other = pattern === null ? undefined : written.get(pattern);
    if (pattern === null) {
      problems.push({ entry, problem: { ...place, code: 'beep-shape', found: key } });
    } else if (other !== undefined) {
      problems.push({ entry, problem: { ...place, code: 'beep-twice', found: key, other } });
    } else {
      written.set(pattern, key);
      patterns.set(pattern, { pattern, band, means });
    }
  }
  const listed = [...patterns.values()];
  const bands = [...new Set(listed.map(({ band }) => band).filter((band) => band !== otherBand)), otherBand];
  return { measure: { kind: 'beeps', patterns: listed, bands }, problems };
}
