import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileTree } from '../../../engine/compile.ts';
import { formatDiagnostic } from '../../../engine/diagnostics/index.ts';
import { readInput } from '../diagnostics/fixtures.ts';

/** Whole trees and the pieces that the language is made of: cut up and put together anew. */
const trees = ['uncovered-combination', 'brace-value', 'fault-with-two-sections', 'task-time'].map(readInput);
const pieces = fc.constantFrom(
  '## ',
  '# ',
  '### ',
  '---',
  '\n',
  '\n\n',
  '\r\n',
  '\r',
  '> ',
  '- ',
  '* ',
  '1. ',
  '    ',
  '\t',
  '→',
  '->',
  '=>',
  '`',
  '``',
  '```\n',
  '~~~\n',
  '[a](#a)',
  '](',
  '[',
  ']:',
  '<b>',
  '<!--',
  '**Warning** ',
  '[!DANGER]',
  'Read `v5`.',
  'Read `',
  'Do: ',
  'Do, 5 min',
  'Then → ',
  'Fault `shorted_bead`.',
  'Prove `v5`.',
  'Stop: x',
  'otherwise',
  'cannot read',
  'all good',
  ' is not ',
  ' and ',
  ', ',
  ' or ',
  'good',
  'v5',
  '__proto__',
  'constructor',
  'toString',
  '{fsb}',
  '`= fsb *`',
  '| a | b |\n| - | - |',
  '\\',
  '&#x41;',
  '\u00a0',
  '\ufeff',
  '\u0000',
  '\ud800',
  'readings:',
  'scale: low < ',
  'expect: ',
  '  ',
  ': ',
  '{',
  '}',
  ',',
  '%',
  '5 V',
  '#',
  '"',
  "'",
  '&a',
  '*a',
  '!',
  '@',
  '- {',
);
const mangled = fc
  .tuple(
    fc.constantFrom(...trees),
    fc.array(fc.tuple(fc.nat(), fc.nat(60), fc.array(pieces, { maxLength: 4 })), { maxLength: 6 }),
  )
  .map(([tree, cuts]) =>
    cuts.reduce((text, [at, length, insert]) => {
      const from = at % (text.length + 1);
      return text.slice(0, from) + insert.join('') + text.slice(from + length);
    }, tree),
  );
const made = fc.array(pieces, { maxLength: 40 }).map((parts) => `${trees[0]}${parts.join('')}`);
const texts = fc.oneof(
  { weight: 5, arbitrary: mangled },
  { weight: 3, arbitrary: made },
  { weight: 1, arbitrary: fc.string({ unit: 'binary' }) },
);

describe('compileTree() on any text', () => {
  test('never throws, stays inside the file, and can say what it found', () => {
    fc.assert(
      fc.property(texts, (text) => {
        for (const diagnostic of compileTree(text, { id: 'x' }).diagnostics) {
          expect(diagnostic.span.from).toBeGreaterThanOrEqual(0);
          expect(diagnostic.span.to).toBeGreaterThanOrEqual(diagnostic.span.from);
          expect(diagnostic.span.to).toBeLessThanOrEqual(text.length);
          expect(formatDiagnostic('x.md', text, diagnostic)).toMatch(
            /^x\.md:\d+:\d+: (error|warning|hint) [a-z-]+: \S/,
          );
        }
      }),
      { numRuns: Number(process.env.RUNS ?? 400) },
    );
  });
});
