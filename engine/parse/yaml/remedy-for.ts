import type { YamlFeature } from '../../diagnostics/front-matter-facts.ts';
import type { Edit } from './edited-text.ts';
import { errorRemedy } from './error-remedy.ts';
import { hashCutsText } from './hash-cuts-text.ts';
import { leadingGreater } from './leading-greater.ts';
import { loneKey } from './lone-key.ts';
import { colonWithoutSpace, notAPair } from './not-a-pair.ts';
import { insertion, quote } from './quote.ts';
import { depthLimit } from './read-yaml.ts';
import { nameOfSpace } from './special-space.ts';
import type { Remedy, Trouble, TroubleKind } from './trouble.ts';
import { valueAt, wordsAt } from './value-at.ts';

/** What to tell about a trouble; null where there is nothing to tell. */
export const remedyFor = (trouble: Trouble, text: string): Remedy | null =>
  remedies[trouble.kind](trouble, text);

const remedies: Readonly<Record<TroubleKind, (trouble: Trouble, text: string) => Remedy | null>> = {
  error: errorRemedy,
  comment: hashCutsText,
  'lone-key': loneKey,
  'no-table': (trouble, text) => {
    const words = text.trimStart();
    if (words.startsWith('...')) return feature('document end', trouble);
    return colonWithoutSpace(trouble, text) ?? notAPair(trouble, text, []);
  },
  'glued-pair': (trouble, text) => colonWithoutSpace(trouble, text),
  'key-is-no-text': (trouble) => feature('key that is no text', trouble),
  'refused-key': (trouble) =>
    trouble.message === '<<'
      ? feature('merge key', trouble)
      : { facts: { code: 'unknown-key', key: trouble.message, near: [], keys: [] }, span: spanOf(trouble) },
  'duplicate-key': (trouble) => ({
    facts: { code: 'duplicate-key', key: trouble.message },
    span: spanOf(trouble),
    ...(trouble.other && { related: { from: trouble.other.from, to: trouble.other.to } }),
  }),
  alias: (trouble, text) => feature('alias', trouble, withoutMark(trouble, text)),
  anchor: (trouble, text) => feature('anchor', trouble, withoutMark(trouble, text)),
  tag: (trouble, text) => feature('tag', trouble, withoutMark(trouble, text)),
  'special-dash': (trouble, text) => {
    const space = { from: trouble.from + 1, to: trouble.from + 2 };
    const edits = [{ ...space, insert: ' ' }];
    const name = nameOfSpace(text.charAt(space.from));
    return {
      facts: { code: 'special-space', name },
      span: space,
      fix: { title: 'Write a plain space', edits },
      repair: edits,
    };
  },
  'empty-block': (trouble, text) => leadingGreater(trouble, text),
  'too-deep': (trouble, text) => ({
    facts: { code: 'facts-too-deep', depth: Number(trouble.code), limit: depthLimit },
    span: wordsAt(text, trouble.from),
  }),
};

const spanOf = ({ from, to }: Trouble) => ({ from, to });

function feature(
  name: YamlFeature,
  trouble: Trouble,
  change?: { title: string; edits: readonly Edit[] },
): Remedy {
  const told = { facts: { code: 'yaml-feature', feature: name } as const, span: spanOf(trouble) };
  return change === undefined ? told : { ...told, fix: change, repair: change.edits };
}

/** A text that happens to begin with `&`, `*` or `!` goes into quotes; a mark in front of anything else goes away. */
function withoutMark(trouble: Trouble, text: string): { title: string; edits: readonly Edit[] } {
  const value = valueAt(text, trouble.from);
  const isText = trouble.message === 'text' && !text.startsWith('!!', trouble.from);
  if (value !== null && isText && value.from <= trouble.from) {
    return { title: 'Put the text in quotes', edits: quote(text, value) };
  }
  const mark = text.slice(trouble.from, trouble.to);
  const space = /^[ \t]*/.exec(text.slice(trouble.to))?.[0].length ?? 0;
  return {
    title: `Take "${mark}" away`,
    edits: [{ ...insertion(trouble.from, ''), to: trouble.to + space }],
  };
}
