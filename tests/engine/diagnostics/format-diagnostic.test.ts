import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../../../engine/diagnostics/diagnostic.ts';
import { diagnosticJson, formatDiagnostic } from '../../../engine/diagnostics/index.ts';
import { columnOf, lineOf } from '../../../engine/diagnostics/line-and-column.ts';

/** A problem where the text has `«…»`, and the text without these marks. */
function marked(drawing: string, more: Partial<Diagnostic> = {}): { text: string; diagnostic: Diagnostic } {
  const from = drawing.indexOf('«');
  const to = drawing.indexOf('»') - 1;
  const diagnostic = { code: 'tab-indent', span: { from, to }, ...more } as Diagnostic;
  return { text: drawing.replace('«', '').replace('»', ''), diagnostic };
}

/** The excerpt: its line and its carets. */
function excerpt(drawing: string): readonly string[] {
  const { text, diagnostic } = marked(drawing);
  return formatDiagnostic('f.md', text, diagnostic).split('\n').slice(1, 3);
}

describe('lineOf() and columnOf()', () => {
  test.each(['\n', '\r\n', '\r'])('count from 1 with line ends %j', (ending) => {
    const text = ['one', '', 'three'].join(ending);
    expect(lineOf(text, 0).number).toBe(1);
    expect(lineOf(text, 3).number).toBe(1);
    expect(lineOf(text, text.indexOf('three')).number).toBe(3);
    expect(lineOf(text, text.length).number).toBe(3);
    expect(columnOf(text, text.indexOf('ree'))).toBe(3);
    const { from, to } = lineOf(text, text.length);
    expect(text.slice(from, to)).toBe('three');
  });

  test('count UTF-16 units', () => {
    expect(columnOf('😀x', 2)).toBe(3);
  });

  test('stay right when one text follows another', () => {
    expect(lineOf('a\nb', 2).number).toBe(2);
    expect(lineOf('ab\n', 2).number).toBe(1);
    expect(lineOf('a\nb', 2).number).toBe(2);
  });
});

describe('formatDiagnostic()', () => {
  test('says where, what and what to do', () => {
    const { text, diagnostic } = marked('a:\n«\t»b: c\n');
    expect(formatDiagnostic('trees/x.md', text, diagnostic)).toBe(
      [
        'trees/x.md:2:1: error tab-indent: YAML is not indented with tabs',
        '2 | \tb: c',
        '  | ^',
        'Write two spaces for each step',
      ].join('\n'),
    );
  });

  test('adds the fix and the other place', () => {
    const { text, diagnostic } = marked('a: b\n«a»: c\n', {
      code: 'duplicate-key',
      key: 'a',
      related: { from: 0, to: 1 },
      fix: { title: 'Take it away', edits: [] },
    } as Partial<Diagnostic>);
    expect(formatDiagnostic('x', text, diagnostic).split('\n').slice(3)).toEqual([
      'Take one of them away, or give it another name',
      'Fix: Take it away',
      'See line 1:',
      '1 | a: b',
      '  | ^',
    ]);
  });

  test.each([
    ['under the span', 'is: «Swap»', ['1 | is: Swap', '  |     ^^^^']],
    ['behind a tab', 'a\t«b»', ['1 | a\tb', '  |  \t^']],
    ['over wide characters', '回«回路»x', ['1 | 回回路x', '  |   ^^^^']],
    ['under a combining mark once', 'e\u0301«e\u0301»', ['1 | e\u0301e\u0301', '  |  ^']],
    ['where nothing is marked', 'ab«»', ['1 | ab', '  |   ^']],
    ['to the end of the first line only', 'a «b\nc»', ['1 | a b', '  |   ^']],
    ['with the number of the line', `${'\n'.repeat(99)}«x»`, ['100 | x', '    | ^']],
  ])('puts carets %s', (_, drawing, expected) => {
    expect(excerpt(drawing)).toEqual(expected);
  });

  test('cuts a long line around the span', () => {
    const [line = '', carets = ''] = excerpt(`${'a'.repeat(300)}«here»${'b'.repeat(300)}`);
    expect(line.length).toBeLessThan(110);
    expect(line.slice(carets.indexOf('^'), carets.lastIndexOf('^') + 1)).toBe('here');
  });

  test('lets no control character through to the terminal', () => {
    const { text, diagnostic } = marked('«\u001B[31m»', {
      code: 'not-a-pair',
      text: '\u001B[2J',
    } as Partial<Diagnostic>);
    expect(formatDiagnostic('x', text, diagnostic)).not.toContain('\u001B');
  });
});

describe('diagnosticJson()', () => {
  test('gives places, words and the facts they are made of', () => {
    const { text, diagnostic } = marked('a: b\n«a»: c\n', {
      code: 'duplicate-key',
      key: 'a',
      related: { from: 0, to: 1 },
    } as Partial<Diagnostic>);
    expect(diagnosticJson('x.md', text, diagnostic)).toEqual({
      file: 'x.md',
      line: 2,
      column: 1,
      endLine: 2,
      endColumn: 2,
      from: 5,
      to: 6,
      severity: 'error',
      code: 'duplicate-key',
      wrong: '"a" stands here a second time',
      mend: 'Take one of them away, or give it another name',
      facts: { key: 'a' },
      related: { line: 1, column: 1, endLine: 1, endColumn: 2, from: 0, to: 1 },
    });
  });
});
