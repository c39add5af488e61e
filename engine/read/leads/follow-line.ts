import type { Link, PhrasingContent } from '../../parse/parse-body.ts';
import { readInlines } from '../prose/read-inlines.ts';
import { readLink } from '../prose/read-link.ts';
import { wordsOf } from '../prose/words-of.ts';
import type { ReadContext } from '../read-context.ts';
import type { CallSyntax, LinkSyntax } from '../section-syntax.ts';
import type { LeadLine } from './lead-line.ts';
import { isJoin, spansBetween } from './spans-between.ts';

const nearForm =
  /^[*_]*(?:follow|call|run|use)[*_]*\s*:?[*_]*\s*(?:the\s+)?(?:procedure\s+)?(\[[^\]\n]*\]\([^)\s]*\.md[^)\s]*\))\s*(.*)$/is;
const nearGiven = /^(?:,?\s*(?:with|for|using)\s+|\(\s*)/i;
const nearPair = /^`?([\p{L}_][\p{L}\p{N}_]*)`?\s*(?:=|:=|:|\bis\b|→|->)\s*`?([^`]+?)`?$/u;

/** ``Follow [Title](file.md) with `a` = `b`, `c` = `d`.`` follows a procedure and comes back. */
export const followLine: LeadLine = {
  word: 'Follow',
  form: 'Follow [Title](file.md) with `a` = `b`.',
  makes: 'call',
  completes: [],
  begins: /^Follow\s+\[[^\]\n]*\]\([^)\s]*\.md[^)\s]*\)\s*(?:with\s+`|\.\s*$)/,
  read({ nodes }, context) {
    const [word, link, ...rest] = nodes;
    if (word?.type !== 'text' || word.value.trim() !== 'Follow' || link?.type !== 'link') return null;
    const procedure = readLink(link, context);
    const given = leads(procedure) ? givenOf(rest) : null;
    return given && { word: 'Follow', procedure: { ...procedure, title: titleOf(link, context) }, given };
  },
  near(text) {
    const match = nearForm.exec(text);
    if (match === null) return null;
    const [, link = '', rest = ''] = match;
    const pairs = pairsOf(rest.trim());
    if (pairs === null) return { instead: null };
    return { instead: `Follow ${link}${pairs.length > 0 ? ` with ${pairs.join(', ')}` : ''}.` };
  },
};

/** A link to the web is something to read, not to follow. */
const leads = ({ file, section }: LinkSyntax): boolean => file !== null || section !== null;

const titleOf = (link: Link, context: ReadContext): string =>
  wordsOf(readInlines(link.children, context)).trim();

/** `.`, or ``with `a` = `b`, `c` = `d`.``; null if anything else is there. */
function givenOf(nodes: readonly PhrasingContent[]): CallSyntax['given'] | null {
  const between = spansBetween(nodes);
  if (between === null || between.spans.length % 2 !== 0) return null;
  const { spans, texts } = between;
  const fits = texts.every((text, index) => {
    if (index === texts.length - 1) return text.trim() === '.';
    if (index === 0) return text.trim() === 'with';
    return index % 2 === 1 ? text.trim() === '=' : isJoin(text);
  });
  if (!fits) return null;
  return spans.flatMap((name, index) => {
    const value = spans[index + 1];
    return index % 2 === 0 && value ? [{ name, value }] : [];
  });
}

/** What was most likely meant to be given, as the language writes it; null where that is not certain. */
function pairsOf(text: string): readonly string[] | null {
  const body = text.replace(/[.;]$/, '').trim();
  if (body === '') return [];
  const start = nearGiven.exec(body);
  if (start === null) return null;
  const pairs = body
    .slice(start[0].length)
    .replace(/\)$/, '')
    .split(/\s*,\s*(?:and\s+)?|\s+and\s+/)
    .map((pair) => nearPair.exec(pair.trim()));
  return pairs.every((pair) => pair !== null) ? pairs.map((pair) => `\`${pair[1]}\` = \`${pair[2]}\``) : null;
}
