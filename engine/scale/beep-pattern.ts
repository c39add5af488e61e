import { tidy } from '../quantity/index.ts';

/** The pattern of a board that stays silent. */
export const silence = 'none';

const mostBeeps = 32;
const mostGroups = 8;
const mostInGroup = 20;

const groups = /^\d{1,2}(?: ?- ?\d{1,2})+$/;
const letters = /^[ls]+$/;
// A count and the beeps it counts, in words or letters: `2 long`, `short`, `1L`.
const counted = /(?:(\d{1,2})(?: ?(?:x|×))? ?)?(longs?|shorts?|l|s)(?![a-z])(?: beeps?)?/g;
const joints = /^(?:[ ,;+&-]|and|then)*$/;

/** A beep pattern in its one stored form: `LSS` for `long short short` or `1 long, 2 short`, `1-3-3` for groups with pauses
 *  between, `none` for silence. A bare number counts short beeps. Null where the text is no pattern. */
export function beepPattern(text: string): string | null {
  const heard = tidy(text).toLowerCase();
  if (/^(?:none|silen(?:t|ce)|no beeps?)$/.test(heard)) return silence;
  if (groups.test(heard)) return groupsOf(heard);
  const alone = /^(\d{1,2})(?: beeps?)?$/.exec(heard);
  if (alone) return beeps('S', Number(alone[1]));
  return letters.test(heard) ? within(heard.toUpperCase()) : inWords(heard);
}

function groupsOf(heard: string): string | null {
  const counts = heard.split('-').map(Number);
  const sound = counts.length <= mostGroups && counts.every((count) => count > 0 && count <= mostInGroup);
  return sound ? counts.join('-') : null;
}

function inWords(heard: string): string | null {
  let pattern = '';
  const rest = heard.replace(counted, (_, count: string | undefined, beep: string) => {
    pattern += beeps(beep.startsWith('l') ? 'L' : 'S', Number(count ?? 1)) ?? '?';
    return ' ';
  });
  return joints.test(rest) && !pattern.includes('?') ? within(pattern) : null;
}

const beeps = (beep: 'L' | 'S', count: number): string | null =>
  count > 0 && count <= mostBeeps ? beep.repeat(count) : null;

const within = (pattern: string): string | null =>
  pattern.length > 0 && pattern.length <= mostBeeps ? pattern : null;
