import type { Block, SignalWord } from '../../model/prose.ts';
import type { Span } from '../../model/span.ts';
import { wordsOf } from '../prose/words-of.ts';
import { type ReadContext, replacing, report } from '../read-context.ts';
import { nearSignalWord, signalWord } from './signal-word.ts';

/** A hazard that stands where nobody would have to acknowledge it is an error, so that none is dropped unseen.
 *  `depth` counts the lists and quotes around the block. */
export function refuseHiddenHazard(block: Block, depth: number, span: Span, context: ReadContext): void {
  const word = hiddenWord(block);
  if (word === null) return;
  const written = context.text.slice(span.from, span.to);
  const quoted = block.type === 'paragraph' && depth === 0;
  const fix = quoted
    ? replacing('Make it a quote', span, `> ${written.replaceAll('\n', '\n> ')}`)
    : undefined;
  report(context, { code: 'hazard-place', word }, span, fix);
}

const aloneAsHeading = /^\W*\w+\W*$/;

function hiddenWord(block: Block): SignalWord | null {
  switch (block.type) {
    case 'paragraph':
      return signalWord(block.children)?.word ?? null;
    case 'heading':
      return aloneAsHeading.test(wordsOf(block.children)) ? nearSignalWord(block.children) : null;
    case 'quote': {
      const [first] = block.children;
      return first?.type === 'paragraph' ? (signalWord(first.children)?.word ?? null) : null;
    }
    default:
      return null;
  }
}
