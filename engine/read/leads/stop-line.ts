import { readInlines } from '../prose/read-inlines.ts';
import { report } from '../read-context.ts';
import { afterColon } from './after-colon.ts';
import type { LeadLine } from './lead-line.ts';

const exact = /^Stop\s*:\s*/;
const near = /^[*_]*stop[*_]*\s*[-–—;.:][*_]*\s+(?=\S)/i;

/** `Stop: …` ends the tree without a fault. */
export const stopLine: LeadLine = {
  word: 'Stop',
  form: 'Stop: why.',
  makes: 'stop',
  completes: [],
  begins: /^Stop:\s/,
  read(piece, context) {
    const first = piece.nodes[0];
    const match = first?.type === 'text' ? exact.exec(first.value) : null;
    if (!match) return null;
    const reason = readInlines(afterColon(piece.nodes, match[0].length), context);
    if (reason.length === 0) report(context, { code: 'nothing-after', word: 'Stop' }, piece.span);
    return { word: 'Stop', reason };
  },
  near(text) {
    const match = near.exec(text);
    return match && { instead: `Stop: ${text.slice(match[0].length)}` };
  },
};
