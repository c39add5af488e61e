import fc from 'fast-check';
import { lineOf } from '../../engine/diagnostics/index.ts';

/** What people and other programs leave in a text. */
export const scraps = fc.oneof(
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
export const damage = fc.record({
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

export const damaged = (text: string, damages: readonly Damage[]): string =>
  damages.reduce(
    (current, each) => ways[each.how]?.(current, each, each.at % (current.length + 1)) ?? current,
    text,
  );
