import { textOf } from './raw.ts';

/** `30 minutes`, `2 h` or a bare number, in minutes; 0 where there is none. */
export function readMinutes(raw: unknown): number {
  const [, amount = '0', hours] = /^(\d+(?:\.\d+)?)\s*(?:(h)|m|$)/.exec(textOf(raw) ?? '') ?? [];
  return Number(amount) * (hours === undefined ? 1 : 60);
}
