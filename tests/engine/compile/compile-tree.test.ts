import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compileTree } from '../../../engine/compile.ts';
import { describe as inWords } from '../../../engine/diagnostics/index.ts';
import { bigTree } from '../../helpers/big-tree.ts';
import { once } from '../../helpers/once.ts';
import { fixtureNames, readInput } from '../diagnostics/fixtures.ts';

const folder = 'tests/fixtures/compile/held-in-reset';
const small = readFileSync(`${folder}/input.md`, 'utf8');
const codes = (text: string) => compileTree(text, { id: 'x' }).diagnostics.map(({ code }) => code);

/** Every fixture of a diagnostic, compiled by itself. */
const fixtures = once(() =>
  fixtureNames().map((name) => {
    const text = readInput(name);
    return { name, text, ...compileTree(text, { id: name }) };
  }),
);

describe('compileTree()', () => {
  test('makes of a small tree what stands beside it', () => {
    const { tree, diagnostics } = compileTree(small, { id: 'held-in-reset' });
    expect(diagnostics).toEqual([]);
    const path = `${folder}/expected.json`;
    if (process.env.UPDATE === '1') writeFileSync(path, `${JSON.stringify(tree, null, 2)}\n`);
    expect(JSON.parse(JSON.stringify(tree))).toEqual(JSON.parse(readFileSync(path, 'utf8')));
  });

  test('compiles the example of the language reference, which is that small tree', () => {
    const [, example] =
      /```markdown\n(---\n[\s\S]*?)```\n/.exec(readFileSync('schema/README.md', 'utf8')) ?? [];
    expect(example).toBe(small);
  });

  test('makes the same of the same text every time', () => {
    const text = bigTree(30);
    const [one, two] = [compileTree(text, { id: 'x' }), compileTree(text, { id: 'x' })];
    expect(JSON.stringify(one)).toBe(JSON.stringify(two));
    expect(one.tree?.digest).toMatch(/^[0-9a-f]{64}$/);
  });

  test('makes the same of a text with Windows line ends and a byte order mark', () => {
    const other = `\ufeff${small.replaceAll('\n', '\r\n')}`;
    const [one, two] = [small, other].map((text) => compileTree(text, { id: 'x' }));
    expect(two?.diagnostics).toEqual([]);
    expect(two?.tree?.digest).toBe(one?.tree?.digest);
    expect(two?.tree?.machine).toEqual(one?.tree?.machine);
  });

  test('gives no tree if and only if something is an error', () => {
    for (const { name, tree, diagnostics } of fixtures()) {
      const hasErrors = diagnostics.some((each) => inWords(each).severity === 'error');
      expect({ name, compiled: tree !== null }).toEqual({ name, compiled: !hasErrors });
    }
  });

  test('reports everything that is wrong at once, in the order of the file', () => {
    const broken = small
      .replace('usual: 5 V', 'usual: 5 W')
      .replace('Read `power_good`', 'Read `power_god`')
      .replace('- otherwise → [Reset chip](#reset-chip)', '- high => [Reset chip](#reset-chips)')
      .replace('Stop: Reset', '<br>\n\nReset');
    expect(codes(broken)).toEqual([
      'wrong-unit',
      'no-reading-named',
      'arrow-form',
      'no-section-named',
      'section-without-lead-line',
      'html',
    ]);
  });

  test('reports every problem inside the file, and fixes that stay inside it', () => {
    for (const { name, text, diagnostics } of fixtures()) {
      const spans = diagnostics.flatMap(({ span, related, fix }) => [
        span,
        ...(related ? [related] : []),
        ...(fix?.edits ?? []),
      ]);
      const outside = spans.filter(({ from, to }) => !(0 <= from && from <= to && to <= text.length));
      expect({ name, outside }).toEqual({ name, outside: [] });
    }
  });

  test('offers fixes of the body after which the problem is gone', () => {
    const bodyCodes = [
      'arrow-form',
      'bare-band',
      'brace-value',
      'comma-before-clause',
      'condition-word',
      'hazard-place',
    ];
    const more = [
      'indented-outcome',
      'lead-inside-paragraph',
      'lazy-quote',
      'list-marker',
      'nested-outcome',
      'no-band-named',
    ];
    const rest = [
      'no-fault-named',
      'no-reading-named',
      'no-section-named',
      'nothing-named',
      'ordered-outcomes',
    ];
    const last = [
      'outcome-in-paragraph',
      'outcome-without-arrow',
      'outcome-without-link',
      'section-form',
      'setext-heading',
      'swallowed-line',
    ];
    for (const code of [...bodyCodes, ...more, ...rest, ...last]) {
      const text = readInput(code);
      const found = compileTree(text, { id: code }).diagnostics.find((each) => each.code === code);
      const edits = found?.fix?.edits ?? [];
      expect({ code, edits: edits.length > 0 }).toEqual({ code, edits: true });
      const mended = edits
        .toReversed()
        .reduce((done, { from, to, insert }) => done.slice(0, from) + insert + done.slice(to), text);
      expect({ code, after: codes(mended) }).not.toMatchObject({ after: expect.arrayContaining([code]) });
    }
  });

  test('says of a file of another kind only that it is no tree', () => {
    for (const kind of ['procedure', 'board', 'case']) {
      expect(codes(small.replace('kind: tree', `kind: ${kind}`).replace('title:', 'tittle:'))).toEqual([
        'not-a-tree',
      ]);
    }
  });

  test('says of a file without facts that they are missing', () => {
    expect(codes('# Notes\n\nJust notes.\n')).toEqual(['front-matter-start']);
    expect(codes('')).toEqual(['front-matter-start']);
  });
});
