import type { Named } from '../named.ts';
import type { ConditionPair } from '../section-syntax.ts';

/** What stands between `Do` and its colon. */
export interface DoTime {
  /** Null where the author gave no time. */
  readonly minutes: number | null;
  readonly wait: number;
  readonly sets: readonly ConditionPair[];
  /** The first part that cannot be read, or null. */
  readonly wrong: Named | null;
}

const amount = /^(wait\s+)?(\d+(?:\.\d+)?)\s*(minutes?|min|hours?|h)$/;
const pair = /^([\p{L}_][\p{L}\p{N}_]*)(\s+)([\p{L}\p{N}][\p{L}\p{N}_-]*)$/u;
/** `a while`, `five mins`, `wait long` name a time and not a condition. */
const timely =
  /^(?:wait|a|an|about|some)\s|\s(?:minutes?|mins?|hours?|hrs?|h|seconds?|secs?|s|while|bit|days?)$/i;

/**
 * Reads the parts between `Do` and the colon: a time, a waiting time, then conditions.
 *
 *     Do, 3 minutes, wait 2 hours, cards out, cpu out: …
 *       └─────────── text ──────────────────────────┘
 *
 * @param text begins with the first comma, or is empty
 * @param from where it stands
 */
export function doTime(text: string, from: number): DoTime {
  let minutes: number | null = null;
  let wait: number | null = null;
  const sets: ConditionPair[] = [];
  for (const part of partsOf(text, from)) {
    const time = amount.exec(part.name);
    const set = time === null && !timely.test(part.name) ? pair.exec(part.name) : null;
    const early = sets.length === 0 && wait === null;
    if (time && time[1] === undefined && minutes === null && early) minutes = toMinutes(time);
    else if (time && time[1] !== undefined && early) wait = toMinutes(time);
    else if (set) sets.push(pairOf(set, part.from));
    else return { minutes, wait: wait ?? 0, sets, wrong: part };
  }
  return { minutes, wait: wait ?? 0, sets, wrong: null };
}

function partsOf(text: string, from: number): readonly Named[] {
  if (text.trim() === '') return [];
  let at = from;
  return text.split(',').flatMap((piece, index) => {
    const start = at + piece.length - piece.trimStart().length;
    at += piece.length + 1;
    const name = piece.trim();
    return index === 0 && name === '' ? [] : [{ name, from: start, to: start + name.length }];
  });
}

function pairOf([, name = '', gap = '', value = '']: RegExpExecArray, from: number): ConditionPair {
  const next = from + name.length + gap.length;
  return {
    condition: { name, from, to: from + name.length },
    value: { name: value, from: next, to: next + value.length },
  };
}

const toMinutes = ([, , number, unit]: RegExpExecArray): number =>
  Number(number) * (unit?.startsWith('h') ? 60 : 1);
