import type { Measure } from '../../model/reading.ts';
import type { Taken } from '../../model/refusal.ts';
import { tidy } from '../../quantity/index.ts';
import { beepPattern } from '../beep-pattern.ts';
import { beepText } from '../beep-text.ts';

type Beeps = Extract<Measure, { kind: 'beeps' }>;

/** A beep pattern as it was typed: `long short short`, `1 long 2 short`, `L S S`, `1-3-3`, `none`. Patterns that no row
 *  lists are taken too: they are in the band `other`. */
export function readBeeps({ patterns }: Beeps, typed: string): Taken<string> {
  const pattern = beepPattern(typed);
  if (pattern !== null) return { ok: true, value: pattern };
  const text = tidy(typed);
  const known = patterns.map((row) => beepText(row.pattern));
  const offers = known.length > 0 ? known : ['long short short', '1-3-3', 'silence'];
  return {
    ok: false,
    refusal: {
      text:
        text === ''
          ? 'Nothing was typed'
          : `"${text.slice(0, 64)}" is not a beep pattern: type the beeps as they are heard, long and short, or groups of them such as 1-3-3`,
      offers,
    },
  };
}
