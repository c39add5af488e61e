import type { Span } from '../../model/span.ts';
import { type RiskKind, riskKinds, riskTable } from './risk-table.ts';
import { runningWords } from './running-words.ts';

/** Words that tell to do something dangerous. */
export interface Risk {
  readonly risk: RiskKind;
  /** The order as it is written, from its verb on. */
  readonly words: string;
  readonly span: Span;
}

/** What stands before an order: nothing, a comma, or a word that joins one to another. */
const before =
  "(?<=^\\s*|[,(]\\s*|\\b(?:and|then|or|now|first|next|carefully|please|also|always|briefly|again|finally|simply|just|only|once more)\\s+|\\b(?:you|one|we)\\s+(?:can|may|must|should|have\\s+to|has\\s+to|need\\s+to|needs\\s+to)\\s+(?:now\\s+|then\\s+)?|^\\s*with\\s+(?:[\\w'-]+\\s+){1,4})";

const participles =
  '(?:opened|touched|measured|probed|checked|tested|lifted|soldered|unsoldered|desoldered|removed|replaced|changed|discharged|adjusted)';

const orders: ReadonlyMap<RiskKind, readonly RegExp[]> = new Map(
  riskKinds.map((kind) => {
    const { verbs, things, gap, alone } = riskTable[kind];
    const thing = `(?:${things.join('|')})\\b`;
    const patterns = [
      `${before}\\b(?:${verbs.join('|')})\\b(?:[\\s,]+[^\\s,]+){0,${gap}}?[\\s,]+${thing}`,
      ...alone.map((order) => `${before}\\b(?:${order})`),
      `\\b${thing}\\s+(?:must|has\\s+to|have\\s+to|should|needs?\\s+to|is\\s+to|are\\s+to)\\s+be\\s+${participles}`,
    ];
    return [kind, patterns.map((pattern) => new RegExp(pattern, 'i'))];
  }),
);

/** A quick look that most sentences do not pass. */
const anyThing = new RegExp(
  riskKinds.flatMap((kind) => [...riskTable[kind].things, ...riskTable[kind].alone]).join('|'),
  'i',
);

/** What ends a piece of text in which a "never" or an "if" holds. */
const breaks = /[.;!?:]+(?=\s|$)|[,\s](?:but|then|instead)\s|\s[–—-]\s/gi;
const condition =
  /^\s*(?:(?:if|when|where|while|once|as (?:long|soon) as|unless|before|after|until|since|because|without|should)\b[^,]*,\s*)+/i;
const forbids =
  /\b(?:do not|don['’]t|never|avoid|must not|mustn['’]t|may not|should not|shouldn['’]t|cannot|can['’]t|nobody|no one|nothing|no need|not to|without|refrain|neither|hands off|keep off|keep away|stay away|away from|rather than|instead of)\b/i;
/** Work that is left to another. */
const another = /\b(?:licensed|qualified|trained|electrician|specialist|expert|workshop|somebody|someone)\b/i;
const byAnother = /^\s+by\s+(?:a|an|somebody|someone)\b/i;
/** Between verb and thing: "measure the rail with the supply unplugged from the mains" does not measure the mains. */
const parts =
  /\b(?:not|no|nothing|never|away|without|instead|unplugged|disconnected|separated|isolated|closed|before|until|unless|that|whether|because)\b/i;

const longestPart = 600;

/** The orders in a piece of prose that begins at `from`, those of one kind once. */
export function findRisks(markdown: string, from: number): readonly Risk[] {
  if (!anyThing.test(markdown)) return [];
  const text = runningWords(markdown);
  const found = new Map<RiskKind, Risk>();
  for (const piece of piecesOf(text)) {
    const sentence = text.slice(piece.from, piece.to);
    if (sentence.length > longestPart || !anyThing.test(sentence)) continue;
    for (const kind of riskKinds) {
      const span = found.has(kind) ? null : orderIn(sentence, kind);
      if (span) {
        const start = from + piece.from;
        const words = sentence.slice(span.from, span.to).replace(/\s+/g, ' ').trim();
        found.set(kind, { risk: kind, words, span: { from: start + span.from, to: start + span.to } });
      }
    }
  }
  return [...found.values()];
}

function* piecesOf(text: string): Generator<Span> {
  let from = 0;
  for (const { index, 0: mark } of text.matchAll(breaks)) {
    yield { from, to: index };
    from = index + mark.length;
  }
  yield { from, to: text.length };
}

function orderIn(sentence: string, kind: RiskKind): Span | null {
  const skipped = condition.exec(sentence)?.[0].length ?? 0;
  const words = sentence.slice(skipped);
  for (const order of orders.get(kind) ?? []) {
    const match = order.exec(words);
    if (match === null) continue;
    const [written] = match;
    const ahead = words.slice(0, match.index);
    const behind = words.slice(match.index + written.length);
    const refused =
      forbids.test(ahead) || another.test(ahead) || parts.test(written) || byAnother.test(behind);
    if (refused) continue;
    const from = skipped + match.index;
    return { from, to: from + written.length };
  }
  return null;
}
