import type { Understood } from '../../model/observation.ts';
import type { Taken } from '../../model/refusal.ts';
import { splitMark, tidy } from '../../quantity/index.ts';
import type { Read } from './read.ts';

const longest = 200;

const offersOf = (taken: Taken<unknown>): readonly string[] => (taken.ok ? [] : taken.refusal.offers);

/** With or without a word for how it behaves; an option may itself be such a word. */
export function marked<T, As extends Understood>(
  typed: string,
  take: (text: string) => Taken<T>,
  as: (value: T) => As,
): Taken<Read<As>> {
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
