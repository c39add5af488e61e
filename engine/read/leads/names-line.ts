import type { Named } from '../named.ts';
import { spanOf } from '../prose/span-of.ts';
import type { LeadLine, Piece } from './lead-line.ts';

type NamesWord = 'Read' | 'Fault' | 'Prove';

const separator = /^(?:,|and|,\s*and)$/;
const spans = /`[^`\n]+`/g;

/** A lead line that is its word, names in code spans, and a full stop. */
export function namesLine(word: NamesWord, row: Pick<LeadLine, 'makes' | 'completes'>): LeadLine {
  const opening = new RegExp(`^${word}\\s+$`);
  const dressed = new RegExp(`^[*_]*${word}s?[*_]*\\s*:?[*_]*\\s*(?=\`)`, 'i');
  const onlyNames = /^(?:[\s,;&+/]|and|or|`[^`\n]+`)*[.;:]?\s*$/;
  const bare = new RegExp(`^${word}:?\\s+((?:\\w*[_\\d]\\w*)(?:\\s*,\\s*\\w+)*)\\s*\\.?$`);
  return {
    word,
    form: `${word} \`a\`, \`b\`.`,
    ...row,
    begins: new RegExp(`^${word}\\s+\``),
    read: (piece) => {
      const names = namesOf(piece, opening);
      return names && { word, names };
    },
    near: (text) => {
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
    },
  };
}

/** The code spans of word, span, separator, span, …, full stop; null if anything else is there. */
function namesOf({ nodes }: Piece, opening: RegExp): Named[] | null {
  if (nodes.length < 3 || nodes.length % 2 === 0) return null;
  const names: Named[] = [];
  for (const [index, node] of nodes.entries()) {
    if (index % 2 === 1) {
      if (node.type !== 'inlineCode') return null;
      const { from, to } = spanOf(node);
      const ticks = Math.max(1, Math.floor((to - from - node.value.length) / 2));
      names.push({ name: node.value, from: from + ticks, to: to - ticks });
    } else {
      if (node.type !== 'text') return null;
      const [pattern, value] =
        index === 0
          ? [opening, node.value]
          : [index === nodes.length - 1 ? /^\.$/ : separator, node.value.trim()];
      if (!pattern.test(value)) return null;
    }
  }
  return names;
}
