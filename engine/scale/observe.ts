import type { Mark, Observation, Understood } from '../model/observation.ts';
import type { Present } from '../model/present.ts';
import type { Measure, Reading } from '../model/reading.ts';
import type { Taken } from '../model/refusal.ts';
import { readTyped, splitMark, tidy } from '../quantity/index.ts';
import { judge } from './judge.ts';
import { readCode } from './read-code.ts';
import { readOption } from './read-option.ts';
import { resolveScale } from './resolve-scale.ts';
import { usedLimits } from './used-limits.ts';

interface Read {
  readonly understood: Understood;
  readonly mark: Mark | null;
  readonly none: boolean;
  readonly remarks: readonly string[];
}

const reads: {
  readonly [Kind in Measure['kind']]: (
    measure: Extract<Measure, { kind: Kind }>,
    typed: string,
  ) => Taken<Read>;
} = {
  quantity: ({ unit, scale }, typed) => readTyped(typed, { unit, allowNone: scale.bands.includes('none') }),
  options: ({ options }, typed) =>
    marked(
      typed,
      (text) => readOption(options, text),
      (option) => ({ kind: 'option', option }),
    ),
  codes: (measure, typed) =>
    marked(
      typed,
      (text) => readCode(measure, text),
      (code) => ({ kind: 'code', code }),
    ),
};

/** What a technician typed for a reading, understood and judged at the present settings. */
export function observe(reading: Reading, present: Present, typed: string): Taken<Observation> {
  const { measure } = reading;
  const read = reads[measure.kind](measure as never, typed);
  if (!read.ok) return read;
  const { understood, mark, none, remarks } = read.value;
  const resolved = resolveScale(reading, present);
  const judged = judge(reading, resolved, understood);
  const { contradiction } = resolved;
  return {
    ok: true,
    value: {
      reading: reading.id,
      typed,
      understood,
      mark,
      // Whoever types the band's own name means that band, even where a limit beside it is not known.
      bands: none && judged.includes('none') ? ['none'] : judged,
      used: usedLimits(resolved),
      remarks: contradiction === null ? remarks : [...remarks, contradiction],
    },
  };
}

const longest = 200;

const offersOf = (taken: Taken<string>): readonly string[] => (taken.ok ? [] : taken.refusal.offers);

/** With or without a word for how it behaves; an option may itself be such a word. */
function marked(
  typed: string,
  take: (text: string) => Taken<string>,
  as: (value: string) => Understood,
): Taken<Read> {
  if (typed.length > longest) {
    const text = `This is ${typed.length} characters long, and an answer has at most ${longest}`;
    return { ok: false, refusal: { text, offers: offersOf(take('')) } };
  }
  const whole = take(typed);
  const split = splitMark(tidy(typed));
  const part = whole.ok || split.mark === null || split.text === '' ? whole : take(split.text);
  if (!part.ok) return whole.ok ? part : whole;
  const mark = part === whole ? null : split.mark;
  return { ok: true, value: { understood: as(part.value), mark, none: false, remarks: [] } };
}
