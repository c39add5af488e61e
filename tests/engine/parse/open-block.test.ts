import { describe, expect, test } from 'vitest';
import { openBlock } from '../../../engine/parse/index.ts';

/** `|` stands where the slice ends, `^` where the next slice may begin. */
function opened(drawing: string): { found: string | null; closes: number | null } {
  const at = drawing.indexOf('|');
  const text = drawing.replace('|', '').replace('^', '');
  const block = openBlock(text, 0, at, text.length);
  return { found: (block && text.slice(block.from).split('\n', 1)[0]) ?? null, closes: block?.to ?? null };
}

const caret = (drawing: string): number => drawing.replace('|', '').indexOf('^');

describe('openBlock()', () => {
  test.each([
    ['nothing', 'words\n\n|## b\n'],
    ['a closed fence', '```\nx\n```\n|## b\n'],
    ['a fence in a list', '- ```\n  x\n|## b\n'],
    ['a fence in a quote', '> ```\n|## b\n'],
    ['HTML that a blank line has closed', '<div>\n\n|## b\n'],
    ['a comment that is closed', '<!-- a -->\n|## b\n'],
    ['inline HTML', 'a <b>\n|## b\n'],
    ['an indented fence', '    ```\n|## b\n'],
  ])('finds nothing open after %s', (_, drawing) => {
    expect(opened(drawing)).toEqual({ found: null, closes: null });
  });

  test.each([
    ['a fence', '```\n|## b\n```\n^words\n', '```'],
    ['a longer fence', '````\n|## b\n```\n````\n^## c\n', '````'],
    ['waves', 'words\n~~~ x\n|## b\n~~~\n^', '~~~ x'],
    ['a comment', '<!-- a\n|## b\n-->\n^words\n', '<!-- a'],
    ['HTML, up to the blank line', '<div>\n|## b\nx\n^\nwords\n', '<div>'],
    ['a block further on', `\`\`\`\n|## b\n${'x\n'.repeat(2000)}\`\`\`\n^## c\n`, '```'],
  ])('finds %s and where it closes', (_, drawing, found) => {
    expect(opened(drawing)).toEqual({ found, closes: caret(drawing) });
  });

  test('finds a block without an end', () => {
    expect(opened('```\n|## b\nwords\n')).toEqual({ found: '```', closes: null });
  });
});
