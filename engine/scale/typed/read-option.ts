import type { Option } from '../../model/reading.ts';
import type { Taken } from '../../model/refusal.ts';
import { nearest } from '../../names/nearest.ts';
import { tidy } from '../../quantity/index.ts';

/** One of a list as it was typed: by name, by the beginning of one name, or by its number in the list. */
export function readOption(options: readonly Option[], typed: string): Taken<string> {
  const text = tidy(typed);
  const names = options.map(({ name }) => name);
  const found = names.includes(text) ? text : byLikeness(names, text);
  if (found !== null) return { ok: true, value: found };
  if (text === '') return refuse('Nothing was typed', names);
  const meant = names.filter((name) => flat(name).startsWith(flat(text)));
  if (meant.length > 1) return refuse(`"${text}" can be ${meant.join(' or ')}`, meant);
  const near = nearest(text, names);
  return refuse(`"${text.slice(0, 64)}" is not one of ${names.join(', ')}`, [
    ...new Set([...near, ...names]),
  ]);
}

function byLikeness(names: readonly string[], text: string): string | null {
  const wanted = flat(text);
  const same = names.filter((name) => flat(name) === wanted);
  if (same.length === 1) return same[0] ?? null;
  if (/^\d{1,3}$/.test(text)) return names[Number(text) - 1] ?? null;
  const begun = wanted === '' ? [] : names.filter((name) => flat(name).startsWith(wanted));
  return begun.length === 1 ? (begun[0] ?? null) : null;
}

/** Letter case and the kind of joint do not tell options apart. */
const flat = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, '-');

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
