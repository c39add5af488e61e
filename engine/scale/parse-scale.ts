import type { Formula } from '../model/formula.ts';
import type { Scale } from '../model/reading.ts';
import type { Parsed, TextProblem } from '../model/text-problem.ts';
import { isBandName } from './is-band-name.ts';
import { parseLimit } from './parse-limit.ts';

const longest = 1000;

/** Reads `low < 0.8 V < between < 2 V < high`: bands and limits in turn, low end first.
 *  @param unit the reading's, canonical */
export function parseScale(text: string, unit: string): Parsed<Scale> {
  if (text.length > longest) {
    const facts = { code: 'scale-shape', expected: `at most ${longest} characters`, found: text } as const;
    return { ok: false, problems: [{ from: 0, to: text.length, ...facts }] };
  }
  const problems: TextProblem[] = [];
  const bands: string[] = [];
  const limits: Formula[] = [];
  let from = 0;
  const parts = text.split('<');
  for (const [place, part] of parts.entries()) {
    const word = part.trim();
    const start = from + part.indexOf(word);
    const span = { from: start, to: start + word.length };
    from += part.length + 1;
    if (place % 2 === 1) {
      const limit = parseLimit(part, span.from - part.indexOf(word), unit);
      if (limit.ok) limits.push(limit.value);
      else problems.push(...limit.problems);
    } else if (!isBandName(word)) {
      problems.push({ ...span, code: 'scale-shape', expected: 'the name of a band', found: word });
    } else {
      if (bands.includes(word)) problems.push({ ...span, code: 'same-band-twice', band: word });
      bands.push(word);
    }
  }
  if (problems.length === 0 && (parts.length < 3 || parts.length % 2 === 0)) {
    const expected = parts.length < 3 ? 'two bands with a limit between them' : 'a band after the last limit';
    problems.push({ from: 0, to: text.length, code: 'scale-shape', expected, found: text.trim() });
  }
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, value: { written: text.trim(), bands, limits, byMagnitude: false, nominal: null } };
}
