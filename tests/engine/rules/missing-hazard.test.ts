import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compileTree } from '../../../engine/compile.ts';
import type { Diagnostic } from '../../../engine/diagnostics/diagnostic.ts';
import { missingHazard } from '../../../engine/rules/missing-hazard.ts';
import { folderLibrary } from '../../helpers/folder-library.ts';
import { linkedTree } from '../../helpers/small-tree.ts';

const facts = { readings: { v5: 'low *good' }, faults: { a: 'v5 low', b: 'v5 low' } };

/** What is missing in a body: `warning "Open the supply"`. */
const missing = (body: string): string[] =>
  missingHazard(linkedTree(facts, body).tree).map((each) => written(each, body));

const written = (each: Diagnostic, body: string): string =>
  `${each.code === 'hazard-missing' ? each.signal : each.code} "${body.slice(each.span.from, each.span.to)}"`;

/** Where the shipped tree stands among the files it names. */
const shipped = { id: 'no-post-586', path: 'trees/no-post-586.md', library: folderLibrary('trees') };

const stop = (...paragraphs: string[]): string => ['## A', ...paragraphs, 'Stop: here.'].join('\n\n');

describe('missingHazard()', () => {
  test.each([
    ['prose', stop('Look.', 'Open the supply.'), 'warning "Open the supply"'],
    ['a list', stop('- look\n- discharge the anode'), 'danger "discharge the anode"'],
    ['a table', stop('| 1 | Reflow the chip. |\n|---|---|\n| 2 | Look. |'), 'caution "Reflow"'],
    ['a quote that is no hazard', stop('> Open the supply.'), 'warning "Open the supply"'],
    ['a task', '## A\n\nDo, 5 minutes: open the supply.\n\nThen → [A](#a)', 'warning "open the supply"'],
    ['a stop', '## A\n\nStop: open the supply.', 'warning "open the supply"'],
    ['a remedy', '## A\n\nFault `a`.\n\nOpen the supply.\n\nProve `v5`.', 'warning "Open the supply"'],
  ])('finds what is told without a hazard in %s', (_where, body, expected) => {
    expect(missing(body)).toEqual([expected]);
  });

  test.each([
    ['a heading', stop('### Open the supply', 'Never.')],
    ['code', stop('```\nOpen the supply.\n```')],
    ['a hazard', stop('> **Notice** Open the supply outdoors.')],
    ['an outcome', '## A\n\nRead `v5`.\n\n- low → [A](#a), open the supply\n- otherwise → [A](#a)'],
  ])('does not look into %s', (_where, body) => {
    expect(missing(body)).toEqual([]);
  });

  test.each([
    ['a warning of its own', stop('> **Warning** Mains inside.', 'Open the supply.'), 0],
    ['a danger of its own', stop('Open the supply.', '> **Danger** Mains inside.'), 0],
    ['a caution, which is not enough', stop('> **Caution** Mains inside.', 'Open the supply.'), 1],
    ['a caution for heat, which is', stop('> **Caution** It burns.', 'Reflow the chip.'), 0],
    ['a notice for heat, which is not', stop('> **Notice** It burns.', 'Reflow the chip.'), 1],
    [
      'a warning in its remedy',
      '## A\n\nFault `a`.\n\n> **Warning** Mains.\n\nOpen the supply.\n\nProve `v5`.',
      0,
    ],
    ['a warning above that speaks of it', `> **Warning** Mains inside.\n\n${stop('Open the supply.')}`, 0],
    [
      'a warning above that speaks of something else',
      `> **Warning** Glass.\n\n${stop('Open the supply.')}`,
      1,
    ],
    ['a caution above', `> **Caution** Mains inside.\n\n${stop('Open the supply.')}`, 1],
    [
      'a warning in another section',
      `${stop('Open the supply.')}\n\n## B\n\n> **Warning** Mains.\n\nStop: b.`,
      1,
    ],
  ])('takes for enough or not enough: %s', (_what, body, count) => {
    expect(missing(body)).toHaveLength(count);
  });

  test('tells each kind of danger once in a section', () => {
    const body = stop('Open the supply. Measure the mains.', 'Lift it with hot air. Reflow it.');
    expect(missing(body)).toEqual(['warning "Open the supply"', 'caution "Lift it with hot air"']);
  });

  test('looks at where the probe of a reading goes', () => {
    const body = '## A\n\nRead `v5`.\n\n- low → [A](#a)\n- otherwise → [A](#a)';
    const { tree } = linkedTree(facts, body);
    const readings = tree.facts.readings.map((reading) => ({
      ...reading,
      points: ['mains inlet', 'ground'],
    }));
    const found = missingHazard({ ...tree, facts: { ...tree.facts, readings } });
    expect(found.map((each) => written(each, body))).toEqual(['warning "Read `v5`."']);
  });

  test('finds nothing in the shipped tree', () => {
    const text = readFileSync('trees/trees/no-post-586.md', 'utf8');
    const codes = compileTree(text, shipped).diagnostics.map(({ code }) => code);
    expect(codes).not.toContain('hazard-missing');
  });

  test('finds what the shipped tree would lack without its hazards', () => {
    const text = readFileSync('trees/trees/no-post-586.md', 'utf8').replace(/^>.*\n/gm, '');
    const found = compileTree(text, shipped).diagnostics.filter(({ code }) => code === 'hazard-missing');
    expect(found.length).toBeGreaterThan(2);
  });
});
