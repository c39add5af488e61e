import type { RootContent } from 'mdast';
import { markdown } from './markdown.ts';

const probe = '## x';
/** How much to parse at first, to see where a block ends. */
const firstWindow = 256;

/** Only fences and HTML can keep a heading at column 0 from being one. */
const canSwallow = /^ {0,3}(?:`{3}|~{3}|<)/m;

/** A fence or HTML block that goes on beyond the slice it begins in. */
export interface OpenBlock {
  readonly from: number;
  /** Where the line after it begins; null if it does not end before `limit`. */
  readonly to: number | null;
}

/**
 * The fence or HTML block that is still open at the end of a slice.
 *
 *     ## One            from
 *     ```               the block's from
 *     ## not a heading  to
 *     ```
 *     ## Two            the block's to
 *
 * @param from where the slice begins in `text`
 * @param to where it ends, which is where a line begins
 * @param limit where to stop looking
 * @returns null if nothing is open, and a heading at `to` is a heading
 */
export function openBlock(text: string, from: number, to: number, limit: number): OpenBlock | null {
  const open = swallowing(text.slice(from, to));
  if (open === null) return null;
  const start = lineStart(text, from + offsetOf(open, 'start'));
  for (let size = firstWindow; ; size *= 2) {
    const end = lineEnd(text, Math.max(to, start + size), limit);
    const [first, next] = markdown(text.slice(start, end) + probe).children;
    if (first !== undefined && next !== undefined) {
      return { from: start, to: Math.max(to, lineEnd(text, start + offsetOf(first, 'end'), limit)) };
    }
    if (end >= limit) return { from: start, to: null };
  }
}

/** Whether a block is still open at the end of a slice. */
export const leavesOpen = (slice: string): boolean => swallowing(slice) !== null;

/** The block that takes in a heading put right after `text`. */
function swallowing(text: string): RootContent | null {
  if (!canSwallow.test(text)) return null;
  const last = markdown(text + probe).children.at(-1);
  if (last === undefined) return null;
  return last.type === 'heading' && offsetOf(last, 'start') === text.length ? null : last;
}

const offsetOf = (node: RootContent, side: 'start' | 'end'): number => node.position?.[side].offset ?? 0;

const lineStart = (text: string, at: number): number =>
  Math.max(text.lastIndexOf('\n', at - 1), text.lastIndexOf('\r', at - 1)) + 1;

/** The end of the line that holds `at`, its line ending included, but not beyond `limit`. */
function lineEnd(text: string, at: number, limit: number): number {
  const ending = /\r\n|\r|\n/g;
  ending.lastIndex = at;
  const found = ending.exec(text);
  return found === null ? limit : Math.min(limit, ending.lastIndex);
}
