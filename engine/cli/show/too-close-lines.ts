import { settlerWords } from '../../doubt/index.ts';
import { wrap } from '../../prose/plain-text.ts';
import type { Question, Session } from '../../run/index.ts';

/** Where the readings leave more than one way: why, what would settle it, and the ways. */
export function tooCloseLines(
  session: Session,
  { ways, unsettled }: Extract<Question, { readonly ask: 'too-close' }>,
  width: number,
): readonly string[] {
  return [
    ...unsettled.map(({ reading, bands, by }) => {
      const open = `${reading.is}: ${bands.join(' or ')} is possible`;
      return wrap(
        by.length === 0 ? `${open}.` : `${open}. ${listed(by.map(settlerWords))} would settle it.`,
        width,
      );
    }),
    'Measure again (retake), or go on as if:',
    ways
      .map(
        ({ target, bands }) =>
          `  as if ${target}   (${Object.entries(bands)
            .filter(([name]) => session.position.taken.has(name))
            .map(([name, band]) => `${name} ${band}`)
            .join(', ')})`,
      )
      .join('\n'),
  ];
}

function listed(words: readonly string[]): string {
  const text = words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')}, or ${words.at(-1)}`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}
