import type { Named } from '../named.ts';
import type { LeadLine, Piece } from './lead-line.ts';
import { isJoin, spansBetween } from './spans-between.ts';

type NamesWord = 'Read' | 'Fault' | 'End';

const spans = /`[^`\n]+`/g;

/** A lead line that is its word, names in code spans, and a full stop. */
export function namesLine(word: NamesWord, row: Pick<LeadLine, 'makes' | 'completes'>): LeadLine {
  const opening = new RegExp(`^${word}\\s+$`);
  return {
    word,
    form: `${word} \`a\`, \`b\`.`,
    ...row,
    begins: new RegExp(`^${word}\\s+\``),
    read: (piece) => {
      const names = namesOf(piece, opening);
      return names && { word, names };
    },
    near: nearNames(word),
  };
}

/** Names in code spans with joins between them and a full stop; null if anything else is there. */
function namesOf({ nodes }: Piece, opening: RegExp): readonly Named[] | null {
  const between = nodes.length < 3 ? null : spansBetween(nodes);
  if (between === null) return null;
  const [first = '', ...joins] = between.texts;
  const end = joins.pop() ?? '';
  return opening.test(first) && joins.every(isJoin) && end.trim() === '.' ? between.spans : null;
}

/** The near miss of a line that names things: `Read: v5`, ``**Read** `v5` ``, `Read v5.` */
export function nearNames(word: string): LeadLine['near'] {
  const dressed = new RegExp(`^[*_]*${word}s?[*_]*\\s*:?[*_]*\\s*(?=\`)`, 'i');
  const onlyNames = /^(?:[\s,;&+/]|and|or|`[^`\n]+`)*[.;:]?\s*$/;
  const bare = new RegExp(`^${word}:?\\s+((?:\\w*[_\\d]\\w*)(?:\\s*,\\s*\\w+)*)\\s*\\.?$`);
  return (text) => {
    const start = dressed.exec(text);
    if (start) {
      const rest = text.slice(start[0].length);
      return { instead: onlyNames.test(rest) ? `${word} ${(rest.match(spans) ?? []).join(', ')}.` : null };
    }
    const plain = bare.exec(text)?.[1];
    if (plain === undefined) return null;
    return {
      instead: `${word} ${plain
        .split(/\s*,\s*/)
        .map((name) => `\`${name}\``)
        .join(', ')}.`,
    };
  };
}
