import { leadingGreater } from './leading-greater.ts';
import { both, colonWithoutSpace, notAPair } from './not-a-pair.ts';
import { openAt } from './open-at.ts';
import { applied, insertion, quote } from './quote.ts';
import type { Remedy, Trouble } from './trouble.ts';
import { lineAt, valueAt } from './value-at.ts';

type Case = (trouble: Trouble, text: string) => Remedy | null;

/** What the parser's complaint comes down to: the first case that fits. */
export function errorRemedy(trouble: Trouble, text: string): Remedy {
  for (const fits of cases) {
    const remedy = fits(trouble, text);
    if (remedy !== null) return remedy;
  }
  const span = { from: trouble.from, to: trouble.to };
  return { facts: { code: 'yaml-syntax', message: trouble.message }, span };
}

const directive: Case = (_trouble, text) => {
  if (!text.startsWith('%')) return null;
  return { facts: { code: 'yaml-feature', feature: 'directive' }, span: lineAt(text, 0) };
};

/** A quote that is still open at the end. */
const openQuote: Case = ({ message }, text) => {
  if (!message.startsWith('Missing closing')) return null;
  const { quote: at, flows } = openAt(text, text.length);
  if (at === null) return null;
  const line = lineAt(text, at);
  const words = text.slice(at, line.to).trimEnd();
  const end = at + (flows.length > 0 ? words.replace(/[\s}\],]+$/, '').length : words.length);
  const mark = text.charAt(at);
  const edits = [insertion(end, mark)];
  return {
    facts: { code: 'quote-not-closed', quote: mark },
    span: { from: at, to: end },
    ...both('Close the quote', edits),
  };
};

const openBracket: Case = ({ code, message, from }, text) => {
  if (code !== 'BAD_INDENT' || !message.startsWith('Flow ')) return null;
  const bracket = openAt(text, from).flows.at(-1)?.bracket;
  if (bracket === undefined) return null;
  const mark = text.charAt(bracket);
  const closing = mark === '{' ? '}' : ']';
  const line = lineAt(text, from);
  if (text.slice(line.from, line.to).trim().startsWith(closing))
    return moved(text, from, indentOf(text, from) + 2);
  const end =
    bracket +
    text
      .slice(bracket, lineAt(text, bracket).to)
      .replace(/\s+#.*$/, '')
      .trimEnd().length;
  const edits = [insertion(end, mark === '{' ? ' }' : ']')];
  return {
    facts: { code: 'bracket-not-closed', bracket: mark },
    span: { from: bracket, to: end },
    ...both('Close the bracket', edits),
  };
};

const tabIndent: Case = ({ code, from }, text) => {
  if (code !== 'TAB_AS_INDENT') return null;
  const line = lineAt(text, from);
  const indent = /^[ \t]*/.exec(text.slice(line.from, line.to))?.[0] ?? '';
  const tabs = [...text.matchAll(/^ *\t[ \t]*/gm)].map(({ index, 0: space }) => ({
    from: index,
    to: index + space.length,
    insert: space.replaceAll('\t', '  '),
  }));
  return {
    facts: { code: 'tab-indent' },
    span: { from: line.from, to: line.from + indent.length },
    ...both('Write spaces', tabs),
  };
};

/** A line that stands neither where its neighbours stand nor where their values do. */
const uneven: Case = ({ code, from }, text) => {
  if (code !== 'BAD_INDENT') return null;
  const own = indentOf(text, from);
  const above = [...text.slice(0, lineAt(text, from).from).matchAll(/^( *)\S/gm)].map(
    ({ 1: space = '' }) => space.length,
  );
  // Of two columns as near, the one of the line further down.
  const [nearest] = above.reverse().sort((a, b) => Math.abs(a - own) - Math.abs(b - own));
  return nearest === undefined || nearest === own ? null : moved(text, from, nearest);
};

/** A key that stands further right than the key above it, which has a value already. */
const tooFarRight: Case = ({ code, from }, text) => {
  const value = valueAt(text, from);
  if (code !== 'BLOCK_AS_IMPLICIT_KEY' || value === null) return null;
  if (/:(?:[ \t]|$)/.test(text.slice(value.from, value.to)) || text.startsWith('? ', from)) return null;
  const line = lineAt(text, from);
  const next = /^\s*/.exec(text.slice(line.to))?.[0].length ?? 0;
  if (line.to + next >= text.length) return null;
  const key = /^[ \t]*(?:-[ \t]+)*/.exec(text.slice(line.from, line.to))?.[0].length ?? 0;
  return moved(text, line.to + next, key);
};

const missingSpace: Case = (trouble, text) =>
  ['MISSING_CHAR', 'MULTILINE_IMPLICIT_KEY'].includes(trouble.code) ? colonWithoutSpace(trouble, text) : null;

const noPair: Case = (trouble, text) => {
  const isKey = trouble.message.startsWith('Implicit ');
  return isKey && openAt(text, trouble.from).flows.length === 0 ? notAPair(trouble, text) : null;
};

const greater: Case = (trouble, text) =>
  trouble.code === 'UNEXPECTED_TOKEN' ? leadingGreater(trouble, text) : null;

const quotable = new Set([
  'BLOCK_AS_IMPLICIT_KEY',
  'UNEXPECTED_TOKEN',
  'BAD_SCALAR_START',
  'BLOCK_IN_FLOW',
  'MISSING_CHAR',
]);

/** Complaints of the same codes that no quotes mend. */
const unquotable = /^(?:Unexpected , in|Sequence item)/;

const needsQuotes: Case = ({ code, message, from }, text) => {
  const value = valueAt(text, from);
  if (
    !quotable.has(code) ||
    unquotable.test(message) ||
    value === null ||
    isInQuotes(text.slice(value.from, value.to))
  )
    return null;
  const edits = quote(text, value);
  const facts = {
    code: 'needs-quotes',
    text: text.slice(value.from, value.to),
    instead: applied(text, edits, value),
  } as const;
  return { facts, span: value, ...both('Put the text in quotes', edits) };
};

const cases: readonly Case[] = [
  directive,
  openQuote,
  tabIndent,
  openBracket,
  uneven,
  missingSpace,
  tooFarRight,
  greater,
  noPair,
  needsQuotes,
];

const isInQuotes = (value: string): boolean => /^"(?:[^"\\]|\\.)*"$|^'(?:[^']|'')*'$/.test(value);

const indentOf = (text: string, at: number): number => {
  const line = lineAt(text, at);
  return /^ */.exec(text.slice(line.from, line.to))?.[0].length ?? 0;
};

/** The line at `at` with another indentation. */
function moved(text: string, at: number, column: number): Remedy {
  const line = lineAt(text, at);
  const indent = indentOf(text, at);
  const edits = [{ from: line.from, to: line.from + indent, insert: ' '.repeat(column) }];
  const span = { from: line.from + indent, to: line.from + text.slice(line.from, line.to).trimEnd().length };
  return { facts: { code: 'bad-indent' }, span, ...both('Move the line', edits) };
}
