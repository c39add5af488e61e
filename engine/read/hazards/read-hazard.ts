import type { Block, Hazard } from '../../model/prose.ts';
import type { Span } from '../../model/span.ts';
import { type ReadContext, report } from '../read-context.ts';
import { hazardDigest } from './hazard-digest.ts';
import { nearSignalWord, signalWord } from './signal-word.ts';

/** The hazard that a quote states, or null for an ordinary quote. */
export function readHazard(quoted: readonly Block[], span: Span, context: ReadContext): Hazard | null {
  const [first, ...others] = quoted;
  if (first?.type !== 'paragraph' && first?.type !== 'heading') return null;
  const signalled = first.type === 'paragraph' ? signalWord(first.children) : null;
  if (signalled === null) {
    const near = nearSignalWord(first.children);
    if (near !== null) report(context, { code: 'hazard-form', word: near }, span);
    return null;
  }
  const { word, rest } = signalled;
  const blocks = rest.length === 0 ? others : [{ ...first, children: rest }, ...others];
  if (blocks.length === 0) report(context, { code: 'nothing-after', word: capital(word) }, span);
  return { word, blocks, digest: hazardDigest(word, blocks) };
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
