import type { Inline } from '../../model/prose.ts';
import { readInlines } from '../prose/read-inlines.ts';
import { type ReadContext, report } from '../read-context.ts';
import { afterColon } from './after-colon.ts';
import type { LeadLine, Piece } from './lead-line.ts';

const amount = '(\\d+(?:\\.\\d+)?)\\s*(minutes?|min|hours?|h)';
const exact = new RegExp(`^Do(?:,\\s*${amount})?(?:,\\s*wait\\s+${amount})?\\s*:\\s*`);
const timed = /^Do\s*,([^:\n]*):\s*/;
const near = /^[*_]*do[*_]*\s*([-–—;.:]|,[^:]{0,40}:)[*_]*\s+(?=\S)/i;

/** `Do: …`, `Do, 5 minutes: …`, `Do, 5 minutes, wait 2 hours: …` is work to be done. */
export const doLine: LeadLine = {
  word: 'Do',
  form: 'Do: what to do.',
  makes: 'task',
  completes: null,
  begins: /^Do(?:,[^:\n]{0,60})?:\s/,
  read(piece, context) {
    const first = piece.nodes[0];
    if (first?.type !== 'text') return null;
    const match = exact.exec(first.value);
    if (match) {
      const minutes = match[1] === undefined ? null : toMinutes(match[1], match[2]);
      return {
        word: 'Do',
        task: taskOf(piece, match[0].length, context),
        minutes,
        wait: toMinutes(match[3], match[4]),
      };
    }
    const wrong = timed.exec(first.value);
    if (!wrong) return null;
    report(context, { code: 'task-time', text: (wrong[1] ?? '').trim() }, piece.span);
    return { word: 'Do', task: taskOf(piece, wrong[0].length, context), minutes: null, wait: 0 };
  },
  near(text) {
    const match = near.exec(text);
    return match && { instead: match[1]?.startsWith(',') ? null : `Do: ${text.slice(match[0].length)}` };
  },
};

function taskOf(piece: Piece, length: number, context: ReadContext): readonly Inline[] {
  const task = readInlines(afterColon(piece.nodes, length), context);
  if (task.length === 0) report(context, { code: 'nothing-after', word: 'Do' }, piece.span);
  return task;
}

function toMinutes(number: string | undefined, unit: string | undefined): number {
  if (number === undefined) return 0;
  return Number(number) * (unit?.startsWith('h') ? 60 : 1);
}
