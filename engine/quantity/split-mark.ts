import type { Mark } from '../model/observation.ts';

const forms: Readonly<Record<string, Mark>> = {
  stead: 'steady',
  wander: 'wanders',
  climb: 'climbs',
  puls: 'pulses',
  float: 'floats',
};
const anywhere = /stead|wander|climb|puls|float/i;
const behind = /^(.*?)[\s,;]*\b(stead|wander|climb|puls|float)(?:y|e|s|es|ing)?$/i;
const before = /^(stead|wander|climb|puls|float)(?:y|e|s|es|ing)?\b[\s,;:]*(.*)$/i;

/** One mark word before or behind a value: `25.2 MHz wanders` is `25.2 MHz` and `wanders`. */
export function splitMark(text: string): { readonly text: string; readonly mark: Mark | null } {
  if (!anywhere.test(text)) return { text, mark: null };
  const tail = behind.exec(text);
  const [value, word] = tail ? [tail[1], tail[2]] : (before.exec(text)?.slice(1).reverse() ?? []);
  const mark = forms[word?.toLowerCase() ?? ''];
  return mark === undefined ? { text, mark: null } : { text: value ?? '', mark };
}
