import { type Inline, type SignalWord, signalWords } from '../../model/prose.ts';
import { wordsOf } from '../prose/words-of.ts';

/** A signal word at the beginning of some text, and the text without it. */
export interface Signalled {
  readonly word: SignalWord;
  readonly rest: readonly Inline[];
}

const words = signalWords.join('|');
const alone = new RegExp(`^\\s*(${words})\\b`, 'i');
const withColon = new RegExp(`^\\s*(${words})\\s*:`, 'i');
const inBrackets = new RegExp(`^\\s*\\[!(${words})\\]`, 'i');
const anyhow = new RegExp(`^[^\\p{L}\\p{N}]*(${words})\\b`, 'iu');
const separator = /^[\s:.!–—-]+/;

/** `**Warning** …`, `**Warning:** …`, `Warning: …`, `[!WARNING] …`. */
export function signalWord(inlines: readonly Inline[]): Signalled | null {
  const [first, ...rest] = inlines;
  if (first?.type === 'strong') return inStrong(first.children, rest);
  if (first?.type !== 'text') return null;
  const match = withColon.exec(first.value) ?? inBrackets.exec(first.value);
  if (!match?.[1]) return null;
  return {
    word: match[1].toLowerCase() as SignalWord,
    rest: trimStart([{ type: 'text', value: first.value.slice(match[0].length) }, ...rest]),
  };
}

function inStrong(children: readonly Inline[], rest: readonly Inline[]): Signalled | null {
  const [first, ...others] = children;
  const match = first?.type === 'text' ? alone.exec(first.value) : null;
  if (!match?.[1] || first?.type !== 'text') return null;
  const left = trimStart([{ type: 'text', value: first.value.slice(match[0].length) }, ...others]);
  const kept = left.length === 0 ? trimStart(rest) : [{ type: 'strong' as const, children: left }, ...rest];
  return { word: match[1].toLowerCase() as SignalWord, rest: kept };
}

function trimStart(inlines: readonly Inline[]): readonly Inline[] {
  const [first, ...rest] = inlines;
  if (first?.type !== 'text') return inlines;
  const value = first.value.replace(separator, '');
  return value === '' ? rest : [{ type: 'text', value }, ...rest];
}

/** A signal word that begins the text in whatever dress, written with a capital: somebody may have meant a hazard. */
export function nearSignalWord(inlines: readonly Inline[]): SignalWord | null {
  const word = anyhow.exec(wordsOf(inlines).slice(0, 40))?.[1];
  if (word === undefined || word.charAt(0) !== word.charAt(0).toUpperCase()) return null;
  return word.toLowerCase() as SignalWord;
}
