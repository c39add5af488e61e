import type { Inline } from '../../model/prose.ts';
import { readInlines } from '../prose/read-inlines.ts';
import { type ReadContext, report } from '../read-context.ts';
import type { ConditionPair } from '../section-syntax.ts';
import { afterColon } from './after-colon.ts';
import { doTime } from './do-time.ts';
import type { LeadLine, Piece } from './lead-line.ts';

const exact = /^Do\s*((?:,[^:\n]*)?):\s*/;
const near =
  /^[*_]*do[*_]*\s*([-–—;.:]|,[^:]{0,40}:|\([^():]{1,60}\)\s*:|\d[^:]{0,40}\b(?:minutes?|min|hours?|h)\s*:)[*_]*\s+(?=\S)/i;
const bracketed = /^(?:\(\s*(\d[^()]*?)\s*\)|(\d[^:]*?))\s*:$/;

/** `Do: …`, `Do, 5 minutes: …`, `Do, 5 minutes, wait 2 hours, cards out: …` is work to be done. */
export const doLine: LeadLine = {
  word: 'Do',
  form: 'Do: what to do.',
  makes: 'task',
  completes: [],
  begins: /^Do(?:,[^:\n]{0,120})?:\s/,
  read(piece, context) {
    const first = piece.nodes[0];
    const match = first?.type === 'text' ? exact.exec(first.value) : null;
    if (match === null) return null;
    const between = match[1] ?? '';
    const at = piece.text.indexOf(between);
    const { wrong, ...time } = doTime(between, piece.span.from + Math.max(0, at));
    if (wrong) {
      const span = at < 0 || wrong.name === '' ? piece.span : wrong;
      report(context, { code: 'task-time', text: wrong.name }, { from: span.from, to: span.to });
    }
    checkTwice(time.sets, context);
    return { word: 'Do', task: taskOf(piece, match[0].length, context), ...time };
  },
  near(text) {
    const match = near.exec(text);
    if (match === null) return null;
    const rest = text.slice(match[0].length);
    const mark = match[1] ?? '';
    const inside = bracketed.exec(mark);
    if (inside) return { instead: `Do, ${tidied(inside[1] ?? inside[2] ?? '')}: ${rest}` };
    return { instead: mark.length > 1 ? null : `Do: ${rest}` };
  },
};

/** `3 min.` and `3mins` are minutes all the same. */
const tidied = (time: string): string => time.replace(/\b(\d+)\s*mins?\.?(?=$|[\s,])/g, '$1 minutes');

function checkTwice(sets: readonly ConditionPair[], context: ReadContext): void {
  const seen = new Set<string>();
  for (const { condition } of sets) {
    const { name, from, to } = condition;
    if (seen.has(name)) report(context, { code: 'name-twice', word: 'Do', name }, { from, to });
    seen.add(name);
  }
}

function taskOf(piece: Piece, length: number, context: ReadContext): readonly Inline[] {
  const task = readInlines(afterColon(piece.nodes, length), context);
  if (task.length === 0) report(context, { code: 'nothing-after', word: 'Do' }, piece.span);
  return task;
}
