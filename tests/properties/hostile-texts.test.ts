import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compileTree } from '../../engine/compile.ts';

const tree = readFileSync('tests/helpers/bench-tree.md', 'utf8');
const front = /^---\n[\s\S]*?\n(?=---\n)/.exec(tree)?.[0] ?? '';
const body = tree.slice(front.length);

/** Texts on which a Markdown or YAML parser alone takes seconds to minutes, or runs out of stack. */
const inSections = [
  '*a_ ',
  '*_',
  '> a\n\n',
  '=\n',
  '- - - - - a\n',
  '- ',
  '> ',
  '[a][',
  '[a](b ',
  '`a``b```c````d ',
  '## a\n```\n',
  '## a\n<!--\n',
];
const inFacts = [
  '[',
  '{a: ',
  '- ',
  '? ',
  ',',
  ']',
  '"a" ',
  '&a ',
  'a: b: c\n',
  ' a: "b\n',
  'a: >= 4\n',
  'x: { a, b }\n',
  '  v: [\n',
];

/** Without the limits these would take longer than a test may. */
describe('compileTree() comes to an end on', () => {
  test.each(inSections)('a section of %j', (part) => {
    for (const size of [60_000, 900_000]) {
      const text = `${front}${body}\n## Last\n\n${part.repeat(size / part.length)}`;
      expect(compileTree(text, { id: 'x' }).tree).toBeNull();
    }
  });

  test.each(inFacts)('facts of %j', (part) => {
    for (const size of [60_000, 900_000]) {
      const text = `${front}${part.repeat(size / part.length)}\n${body}`;
      expect(compileTree(text, { id: 'x' }).tree).toBeNull();
    }
  });
});
