import { type ReadContext, replacing, report } from '../read-context.ts';
import type { ProofName } from '../section-syntax.ts';
import type { LeadLine, Piece } from './lead-line.ts';
import { nearNames } from './names-line.ts';
import { isJoin, spansBetween } from './spans-between.ts';

const opening = /^Prove\s+$/;
const count = /(\d{1,6})\s+of\s+(\d{1,6})\s*$/;

/** A name with its tries, however they are written: `20/20 of`, `20 times`, before it or behind it. */
const counted = '(\\d{1,6})\\s*(?:of|/|out of)\\s*(\\d{1,6})(?:\\s+of)?';
const onlyCounted = new RegExp(
  `^[*_]*prove[*_]*\\s*:?[*_]*\\s*(?:${counted}\\s*(\`[^\`\\n]+\`)|(\`[^\`\\n]+\`)[\\s,:]*${counted})\\s*\\.?$`,
  'i',
);

/** ``Prove `a`, 20 of 20 `b`.`` names what must be normal after the remedy. */
export const proveLine: LeadLine = {
  word: 'Prove',
  form: 'Prove `a`, `b`.',
  makes: null,
  completes: ['Fault'],
  begins: /^Prove\s+(?:\d+\s+of\s+\d+\s+)?`/,
  read(piece, context) {
    const names = proofOf(piece, context);
    return names && { word: 'Prove', names };
  },
  near(text) {
    const match = onlyCounted.exec(text);
    if (match === null) return near(text);
    const [, good = match[5], tries = match[6], name = match[4]] = match;
    return { instead: `Prove ${good} of ${tries} ${name}.` };
  },
};

const near = nearNames('Prove');

/** The names of the proof, each perhaps with a count before it; null if anything else is there. */
function proofOf({ nodes }: Piece, context: ReadContext): readonly ProofName[] | null {
  const between = nodes.length < 3 ? null : spansBetween(nodes);
  if (between === null || between.texts.at(-1)?.trim() !== '.') return null;
  const befores = between.texts.slice(0, -1).map((text) => ({ text, match: count.exec(text) }));
  const fits = befores.every(({ text, match }, index) => {
    const words = match ? text.slice(0, match.index) : text;
    return index === 0 ? opening.test(words) : isJoin(words);
  });
  if (!fits) return null;
  return between.spans.map((span, index) => {
    const match = befores[index]?.match;
    return { ...span, tries: match ? triesOf(match, span.from, context) : null };
  });
}

/** A count with its spaces is looked for no further back than this. */
const longestCount = 60;

/** How many tries are asked; a proof has no room for one that fails. */
function triesOf([, first, second]: RegExpExecArray, nameFrom: number, context: ReadContext): number | null {
  const [good, tries] = [Number(first), Number(second)];
  if (good === tries && tries > 0) return tries;
  const start = Math.max(0, nameFrom - longestCount);
  const written = /(\d{1,6}\s+of\s+\d{1,6})\s*`+$/.exec(context.text.slice(start, nameFrom));
  const from = written ? start + written.index : nameFrom;
  const span = { from, to: from + (written?.[1]?.length ?? 0) };
  const fix = tries > 0 ? replacing(`Write "${tries} of ${tries}"`, span, `${tries} of ${tries}`) : undefined;
  report(context, { code: 'proof-tries', good, tries }, span, fix);
  return null;
}
