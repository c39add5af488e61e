import { silence } from './beep-pattern.ts';

const words: Readonly<Record<string, string>> = { L: 'long', S: 'short' };

/** Patterns of so many beeps are spelled out one by one. */
const few = 4;

/** A stored beep pattern as it is said: `long short short`, `2 long 6 short`, `1-3-3`, `silence`. It reads back. */
export function beepText(pattern: string): string {
  if (pattern === silence) return 'silence';
  if (!/^[LS]+$/.test(pattern)) return pattern;
  if (pattern.length <= few) return [...pattern].map((beep) => words[beep]).join(' ');
  return (pattern.match(/L+|S+/g) ?? []).map((run) => `${run.length} ${words[run.charAt(0)]}`).join(' ');
}
