import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect } from 'vitest';
import { compileTree } from '../../engine/compile.ts';
import type { Diagnostic } from '../../engine/diagnostics/diagnostic.ts';
import { diagnosticJson, formatDiagnostic, lineOf } from '../../engine/diagnostics/index.ts';
import { fixtureNames, readInput } from '../engine/diagnostics/fixtures.ts';

/** Whole files, sound and broken, none so large that a run spends its time on it. */
const files = [readFileSync('tests/helpers/bench-tree.md', 'utf8'), ...fixtureNames().map(readInput)].filter(
  ({ length }) => length < 10_000,
);

const scraps = fc.oneof(
  fc.constantFrom(
    ...'\t\n\r \u00A0\u2009\u200B\uFEFF\u0000\u001B\uD800\uDC00{}[]<>`~*_-:#&!|%@?,"\'\\→µΩ±≥…0.',
    '😀',
    '±',
  ),
  fc.constantFrom(
    '---\n',
    '\n---\n',
    '...\n',
    '## ',
    '\n## ',
    '```\n',
    '<!--',
    '-->',
    '<div>\n',
    '- ',
    '  - ',
    '> ',
    ': ',
    ':',
    ' #',
  ),
  fc.constantFrom(
    '{ ',
    ' }',
    '[',
    ']',
    '"',
    "'",
    '>= ',
    '|\n',
    '&a ',
    '*a',
    '!t ',
    '<<: ',
    '? ',
    '%YAML 1.2\n',
    '__proto__: ',
    'constructor',
  ),
  fc.constantFrom(
    'readings:\n',
    'faults:\n',
    'is: x\n',
    'unit: V\n',
    'expect: 5 V ± 5 %\n',
    'scale: a < 1 V < b\n',
    'needs: [v5]\n',
  ),
  fc.constantFrom(
    'Read `v5`.\n',
    'Do: x\n',
    'Then → [a](#a)\n',
    'Fault `a`.\n',
    'Prove `v5`.\n',
    'Stop: x\n',
    'Follow [a](a.md) with `v5` = `v5`.\n',
    'End `a`.\n',
    'Only if `v5` is good.\n',
    'Do, 3 minutes, cards out: x\n',
    'Prove 20 of 20 `v5`.\n',
    '- any v5 are low → [a](a.md#a)\n',
    'Open the supply.\n',
    '- good → [a](#a)\n',
  ),
  fc.string({ unit: 'binary', maxLength: 6 }),
);

/** One way to damage a text; `at` and `size` are taken modulo what there is. */
const damage = fc.record({
  how: fc.constantFrom('delete', 'insert', 'replace', 'repeat', 'swap', 'indent', 'join', 'cut'),
  at: fc.nat(),
  size: fc.nat({ max: 200 }),
  scrap: scraps,
});
type Damage = typeof damage extends fc.Arbitrary<infer T> ? T : never;

const ways: Readonly<Record<string, (text: string, damage: Damage, at: number) => string>> = {
  delete: (text, { size }, at) => text.slice(0, at) + text.slice(at + 1 + (size % 20)),
  insert: (text, { scrap }, at) => text.slice(0, at) + scrap + text.slice(at),
  replace: (text, { scrap, size }, at) => text.slice(0, at) + scrap + text.slice(at + (size % 9)),
  repeat: (text, { size, scrap }, at) => text.slice(0, at) + scrap.repeat(1 + size) + text.slice(at),
  swap: (text, { size }, at) =>
    text.slice(0, at) +
    text.slice(at + size, at + 2 * size) +
    text.slice(at, at + size) +
    text.slice(at + 2 * size),
  indent: (text, { size }, at) => atLine(text, at, (line) => ' '.repeat(size % 7) + line.trimStart()),
  join: (text, _, at) => atLine(text, at, (line) => line.trimEnd()).replace(/\n/, ' '),
  cut: (text, _, at) => text.slice(0, at),
};

function atLine(text: string, at: number, change: (line: string) => string): string {
  const { from, to } = lineOf(text, at);
  return text.slice(0, from) + change(text.slice(from, to)) + text.slice(to);
}

const mangled = fc
  .tuple(
    fc.constantFrom(...files),
    fc.array(damage, { minLength: 1, maxLength: 8 }),
    fc.constantFrom('\n', '\n', '\r\n', '\r'),
  )
  .map(([file, damages, ending]) => {
    const text = damages.reduce(
      (current, each) => ways[each.how]?.(current, each, each.at % (current.length + 1)) ?? current,
      file,
    );
    return ending === '\n' ? text : text.replaceAll('\n', ending);
  });

const texts = fc.oneof(
  { weight: 8, arbitrary: mangled },
  { weight: 1, arbitrary: fc.array(scraps, { maxLength: 60 }).map((parts) => parts.join('')) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 400 }) },
);

/** Whatever the text: compiling never throws, says the same again, stays inside the file, and has a tree only without errors. */
export function mangledTexts(numRuns: number, seed?: number): void {
  fc.assert(
    fc.property(texts, (text) => {
      const { tree, diagnostics } = compileTree(text, { id: 'mangled' });
      for (const diagnostic of diagnostics) holds(text, diagnostic);
      const errors = diagnostics.filter((each) => diagnosticJson('f', text, each).severity === 'error');
      expect(tree === null).toBe(errors.length > 0);
      const again = compileTree(text, { id: 'mangled' });
      expect({ tree: again.tree, diagnostics: again.diagnostics }).toEqual({ tree, diagnostics });
    }),
    { numRuns, ...(seed === undefined ? {} : { seed }) },
  );
}

function holds(text: string, diagnostic: Diagnostic): void {
  const { span, related, fix } = diagnostic;
  for (const { from, to } of [span, ...(related ? [related] : []), ...(fix?.edits ?? [])]) {
    if (!(from >= 0 && from <= to && to <= text.length))
      expect.fail(`outside the file: ${JSON.stringify(diagnostic)}`);
  }
  expect(formatDiagnostic('f', text, diagnostic)).toMatch(
    /^f:\d+:\d+: (?:error|warning|hint) [a-z]+(?:-[a-z]+)*: \S/,
  );
}
