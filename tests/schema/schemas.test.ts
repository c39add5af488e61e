import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { compileTree } from '../../engine/compile.ts';
import { diagnosticJson } from '../../engine/diagnostics/index.ts';
import { recordOf } from '../../engine/job/index.ts';
import type { Job } from '../../engine/model/job.ts';
import { parseFrontMatter } from '../../engine/parse/index.ts';
import { benchTree, walkWith, wholeTree } from '../helpers/bench.ts';
import { folderLibrary } from '../helpers/folder-library.ts';

const schemaOf = (name: string) => JSON.parse(readFileSync(`schema/${name}.schema.json`, 'utf8')) as object;
const names = ['tree', 'machine', 'compiled-tree', 'compiled-board', 'job', 'record', 'diagnostic'];
// Facts are texts until the schema asks for a number, so the tree's schema is used as the compiler uses it.
const ajv = new Ajv2020({
  allErrors: true,
  coerceTypes: true,
  strict: true,
  strictRequired: false,
  allowUnionTypes: true,
  discriminator: true,
});
ajv.addSchema(names.map(schemaOf));

/** What keeps `data` from being valid: each place once. */
function problems(name: string, data: unknown): readonly string[] {
  const validate = ajv.getSchema(`${name}.schema.json`);
  if (validate === undefined) throw new Error(`no schema "${name}"`);
  const copy = structuredClone(data);
  return validate(copy) ? [] : [...new Set((validate.errors ?? []).map(({ instancePath }) => instancePath))];
}

/** `data` with one value changed, or taken away where it is undefined. */
function changed<T>(data: T, path: readonly (string | number)[], value: unknown): T {
  const copy = structuredClone(data) as Record<string | number, unknown>;
  let at = copy;
  for (const step of path.slice(0, -1)) at = at[step] as Record<string | number, unknown>;
  const last = path.at(-1) ?? '';
  if (value === undefined) delete at[last];
  else at[last] = value;
  return copy as T;
}

const text = readFileSync('tests/helpers/bench-tree.md', 'utf8');
const facts = JSON.parse(
  JSON.stringify(parseFrontMatter({ text: text.slice(4, text.indexOf('\n---\n') + 1), from: 4 }).value.data),
) as Record<string, Record<string, object>>;
const tree = benchTree();
const folder = 'tests/fixtures/compile/short-on-a-rail';
/** A tree with calls inside calls and a hand-over. */
const callTree = compileTree(readFileSync(`${folder}/trees/dead-rail.md`, 'utf8'), {
  id: 'dead-rail',
  path: 'trees/dead-rail.md',
  library: folderLibrary(folder),
}).tree;
const at = (kind: string): number => callTree?.sections.findIndex((section) => section.kind === kind) ?? -1;
/** With readings in doubt, of a known-good board, and of many alike; entries of most kinds that a bench makes. */
const { entries } = walkWith(
  wholeTree(),
  { board: null, laterTrees: [] },
  'open: Board 9',
  ...['66', '66', 'none', 'override: looked at yesterday'],
  'instruments: bench meter (meter): 6 V ± (0.5 % + 2) at 10 mV',
  ...['v5 = 4.76', 'arrange cards out', 'go clocks', '41.4', '20.7', '30.1', 'go reference'],
  ...['twin ref_swing = 1.3 Vpp', '0.7', 'go lines', 'A1 stuck, rest good', 'go how-often', '3 of 10'],
  'runs: pressed the memory home',
);
const later = callTree === null ? [] : [callTree];
const job: Job = {
  ...{ format: 1, kind: 'job', id: 'j1' },
  ...{ tree: wholeTree(), laterTrees: later, board: null, entries },
};
const record = recordOf(job);
const rowOf = (reading: string): number => record.readings.findIndex((row) => row.reading === reading);
const broken = text.replace('kind: tree', 'kind: tre').replace('## ', '## \n\n## ');
const told = compileTree(broken, { id: 'x' }).diagnostics.map((each) => diagnosticJson('x.md', broken, each));
const firstReading = Object.keys(facts.readings ?? {})[0] ?? '';

describe('the schemas', () => {
  test('have a record with all its parts to look at', () => {
    expect(record.readings.some(({ doubt }) => doubt !== null)).toBe(true);
    expect(record.readings.some(({ twin }) => twin !== null)).toBe(true);
    expect([record.findings, record.overrides, record.events].map(({ length }) => length > 0)).toEqual(
      Array(3).fill(true),
    );
    expect(record.bench?.instruments).toHaveLength(1);
  });

  test.each([
    ['tree', facts],
    ['compiled-tree', tree],
    ['compiled-tree', callTree],
    ['machine', callTree?.machine],
    ['machine', tree.machine],
    ['job', job],
    ['record', record],
    ['diagnostic', told],
  ])('%s takes what the engine makes and reads', (name, data) => {
    expect(problems(name, data)).toEqual([]);
  });

  test('have diagnostics to look at', () => {
    expect(told.length).toBeGreaterThan(1);
    expect(told.some(({ fix }) => fix !== undefined)).toBe(true);
  });

  test.each<[string, string, unknown, readonly (string | number)[], unknown, string]>([
    ['tree', 'a key that is none', facts, ['extra'], 'x', ''],
    ['tree', 'another format', facts, ['format'], '2', '/format'],
    [
      'tree',
      'a reading without its measure',
      facts,
      ['readings', firstReading],
      { is: 'x' },
      `/readings/${firstReading}`,
    ],
    ['tree', 'a name with a hyphen', facts, ['readings', 'a-b'], { is: 'x', options: ['a'] }, '/readings'],
    [
      'tree',
      'a weight that is no number',
      facts,
      ['faults', 'x'],
      { is: 'x', weight: 'often' },
      '/faults/x/weight',
    ],
    ['compiled-tree', 'a key that is none', tree, ['extra'], 1, ''],
    ['compiled-tree', 'a missing machine', tree, ['machine'], undefined, ''],
    ['compiled-tree', 'a digest that is none', tree, ['digest'], 'abc', '/digest'],
    [
      'compiled-tree',
      'a reading with a key that is none',
      tree,
      ['readings', 0, 'colour'],
      'red',
      '/readings/0',
    ],
    ['compiled-tree', 'a call without its ends', callTree, ['sections', at('call'), 'ends'], [], '/sections'],
    [
      'compiled-tree',
      'a call without a way in',
      callTree,
      ['sections', at('call'), 'first'],
      undefined,
      '/sections',
    ],
    [
      'compiled-tree',
      'a hand-over to no tree',
      callTree,
      ['sections', at('hand-over'), 'tree'],
      undefined,
      '/sections',
    ],
    [
      'compiled-tree',
      'conditions without values',
      callTree,
      ['conditions', 0, 'values'],
      [],
      '/conditions/0',
    ],
    [
      'compiled-tree',
      'tries that are none',
      tree,
      ['readings', 0, 'measure'],
      { kind: 'tries', enough: 0 },
      '/readings/0',
    ],
    ['machine', 'a missing first state', tree.machine, ['initial'], undefined, ''],
    ['machine', 'a state with context', tree.machine, ['context'], {}, ''],
    ['job', 'another kind', job, ['kind'], 'record', '/kind'],
    ['job', 'an entry without its time', job, ['entries', 1, 'at'], undefined, '/entries/1'],
    ['job', 'an entry of no kind', job, ['entries', 1, 'kind'], 'dreamt', '/entries/1'],
    ['job', 'a job that keeps no later trees', job, ['laterTrees'], undefined, ''],
    ['job', 'a board sheet that is none', job, ['board'], { kind: 'board' }, '/board'],
    ['record', 'a rule that is none', record, ['bench', 'rule'], 'lax', '/bench/rule'],
    [
      'record',
      'a verdict that is none of the four',
      record,
      ['readings', rowOf('v5'), 'doubt', 'verdict'],
      'perhaps',
      `/readings/${rowOf('v5')}/doubt`,
    ],
    ['record', 'a finding without its words', record, ['findings', 0, 'text'], undefined, '/findings/0'],
    [
      'record',
      'what was done all the same without why',
      record,
      ['overrides', 0, 'why'],
      undefined,
      '/overrides/0',
    ],
    ['diagnostic', 'a line 0', told, [0, 'line'], 0, '/0/line'],
    ['diagnostic', 'a severity that is none', told, [0, 'severity'], 'grave', '/0/severity'],
    ['diagnostic', 'a missing sentence', told, [0, 'mend'], undefined, '/0'],
  ])('%s refuses %s', (name, _, data, path, value, place) => {
    const found = problems(name, changed(data, path, value));
    expect(found.some((each) => each.startsWith(place))).toBe(true);
  });
});
