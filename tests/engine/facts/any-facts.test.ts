import fc from 'fast-check';
import { expect, test } from 'vitest';
import { describe as describeProblem } from '../../../engine/diagnostics/describe.ts';
import type { Diagnostic } from '../../../engine/diagnostics/diagnostic.ts';
import treeSchema from '../../../schema/tree.schema.json' with { type: 'json' };
import { factsOf, procedureOf, sharedOf } from './facts-of.ts';

const names = [
  'v5',
  'r',
  'lines',
  'bus',
  'cpu',
  'f',
  'rail',
  '__proto__',
  'constructor',
  'twin',
  'factor',
  '00',
  'a b',
];
const texts = [
  ...names,
  'V',
  'MHz',
  '5 V ± 5 %',
  'at least 2 V',
  'low < 1 V < good',
  'low < twin * 60 % < good < bus < high',
  'v5 / 5 V',
  'factor(v5 / 5 V, r / bus)',
  'v5 > 2 V',
  'v5 < < 2',
  'low',
  'good',
  'yes',
  'any',
  'never',
  'cards out',
  'cards out, cpu in',
  '70 %',
  '20',
  '1.2 Vpp',
  'long short short',
  '1-3-3',
  'none',
  'stuck',
  'one',
  '"',
  '[',
  '—',
];
const readingKeys = Object.keys(treeSchema.$defs.reading.properties);
const faultKeys = Object.keys(treeSchema.$defs.fault.properties);

const quoted = (text: string) => JSON.stringify(text);
const text = fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...texts) }, fc.string({ maxLength: 12 }));
const list = fc.array(text, { maxLength: 5 }).map((items) => `[${items.map(quoted).join(', ')}]`);
const table = fc
  .array(fc.tuple(text, fc.oneof(text.map(quoted), list)), { maxLength: 4 })
  .map((pairs) => `{ ${pairs.map(([key, value]) => `${quoted(key)}: ${value}`).join(', ')} }`);
const value = fc.oneof(text.map(quoted), text.map(quoted), list, table);

const entry = (keys: readonly string[]) =>
  fc
    .uniqueArray(fc.tuple(fc.constantFrom(...keys), value), { maxLength: 9, selector: ([key]) => key })
    .map((pairs) => `{ ${pairs.map(([key, written]) => `${quoted(key)}: ${written}`).join(', ')} }`);

const part = (head: string, keys: readonly string[]) =>
  fc
    .uniqueArray(fc.tuple(fc.constantFrom(...names), entry(keys)), {
      maxLength: 6,
      selector: ([name]) => name,
    })
    .map((rows) =>
      rows.length === 0
        ? ''
        : `${head}:\n${rows.map(([name, row]) => `  ${quoted(name)}: ${row}\n`).join('')}`,
    );

const front = fc
  .tuple(
    fc.constantFrom(
      '',
      'conditions: { cards: [in, out], cpu: [in, out] }\n',
      'tools: [meter]\n',
      'uses: [a.md]\n',
    ),
    fc.oneof(
      fc.constant(''),
      value.map((written) => `conditions: ${written}\n`),
      value.map((written) => `given: ${written}\n`),
    ),
    part('settings', ['is', 'unit', 'options', 'usual']),
    part('takes', ['is', 'bands', 'like', 'unit', 'usual']),
    part('readings', readingKeys),
    part('faults', faultKeys),
    fc.oneof(
      fc.constant(''),
      value.map((written) => `ends: ${written}\n`),
    ),
  )
  .map((parts) => parts.join(''));

test('facts of any kind of file end in a value and problems that lie inside the file, whatever they say', () => {
  fc.assert(
    fc.property(front, (yaml) => {
      const shared = sharedOf(yaml);
      for (const read of [
        () => shared,
        () => factsOf(yaml),
        () => factsOf(yaml, undefined, shared.facts),
        () => procedureOf(yaml),
        () => procedureOf(yaml, shared.facts),
      ]) {
        const { diagnostics, facts } = read();
        const odd = diagnostics.filter(({ span: { from, to }, ...problem }) => {
          const { wrong, mend } = describeProblem({ ...problem, span: { from, to } } as Diagnostic);
          return /undefined|\[object/.test(wrong + mend) || from < 0 || to < from || to > yaml.length + 100;
        });
        expect(odd).toEqual([]);
        expect(new Set(facts.readings.map(({ id }) => id)).size).toBe(facts.readings.length);
      }
    }),
    { numRuns: 100 },
  );
});
