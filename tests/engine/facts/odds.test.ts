import { describe, expect, test } from 'vitest';
import { compileTree } from '../../../engine/compile.ts';
import { problemsOfCompiledTree } from '../../../engine/job/validate-job.ts';
import { usualOdds } from '../../../engine/model/odds.ts';
import { factsOf, sharedOf } from './facts-of.ts';

const readings = `readings:
  v5: { is: v, unit: V, expect: 5 V ± 5 %, source: s }
`;
const faults = (yaml: string): string => `${readings}faults:\n${yaml.replace(/^/gm, '  ')}`;
const oddsOf = (yaml: string) => factsOf(`odds: ${yaml}\n${faults('f: { is: f, shows: { v5: low } }')}`);

describe('the odds of a tree', () => {
  test('are given in per cent, each on its own, the usual ones for the rest', () => {
    const { facts, told } = oddsOf('{ slip: 1.5 %, unlisted normal: 90 % }');
    expect(told).toEqual([]);
    expect(facts.odds).toEqual({ slip: 0.015, unlisted: usualOdds.unlisted, unlistedNormal: 0.9 });
  });

  test('are left open where the tree says nothing of them', () => {
    const { facts, told } = factsOf(faults('f: { is: f, shows: { v5: low } }'));
    expect(told).toEqual([]);
    expect(facts).not.toHaveProperty('odds');
  });

  test.each([
    ['{ slip: 0 % }', 'share-range: 0 %'],
    ['{ slip: 51 % }', 'share-range: 51 %'],
    ['{ unlisted: 100 % }', 'share-range: 100 %'],
    ['{ unlisted normal: 0.00 % }', 'share-range: 0.00 %'],
    ['{ slip: 0.02 }', 'share-form: 0.02'],
    ['{ slip: -2 % }', 'share-form: -2 %'],
    ['{ slips: 2 % }', 'unknown-key: slips'],
    ['{ unlisted-normal: 2 % }', 'unknown-key: unlisted-normal'],
    ['{ slip: [2 %] }', 'wrong-shape: [2 %]'],
    ['5 %', 'wrong-shape: 5 %'],
  ])('are refused as %s', (yaml, problem) => {
    const { facts, told } = oddsOf(yaml);
    expect(told).toEqual([problem]);
    expect(facts).not.toHaveProperty('odds');
  });

  test('are no business of a shared file', () => {
    expect(sharedOf('odds: { slip: 2 % }\n').told).toEqual(['unknown-key: odds']);
  });
});

describe('what a fault brings along', () => {
  const spike = (brings: string) =>
    factsOf(
      faults(
        `spike: { is: s, shows: { v5: high }, brings: ${brings} }\ndead_chip: { is: d, shows: { v5: low } }`,
      ),
    );

  test('is a share of its cases for each fault named, earlier or later in the file', () => {
    const { facts, told } = spike('{ dead_chip: 50 % }');
    expect(told).toEqual([]);
    expect(facts.faults[0]?.brings).toEqual({ dead_chip: 0.5 });
    expect(facts.faults[1]).not.toHaveProperty('brings');
  });

  test('may be a fault of another file, and a fault of a shared file may bring another', () => {
    const shared = sharedOf(
      faults(
        'dead_chip: { is: d, shows: { v5: low } }\nsurge: { is: s, shows: { v5: high }, brings: { dead_chip: 100 % } }',
      ),
    );
    expect(shared.told).toEqual([]);
    expect(shared.facts.faults[1]?.brings).toEqual({ dead_chip: 1 });
    const { facts, told } = factsOf(
      'faults:\n  spike: { is: s, shows: { v5: high }, brings: { dead_chip: 20 % } }\n',
      undefined,
      shared.facts,
    );
    expect(told.filter((each) => !each.startsWith('missing-key'))).toEqual([]);
    expect(facts.faults.at(-1)?.brings).toEqual({ dead_chip: 0.2 });
  });

  test.each([
    ['{ dead_chp: 50 % }', 'no-fault-named: dead_chp'],
    ['{ spike: 50 % }', 'brings-itself: spike'],
    ['{ dead_chip: 0 % }', 'share-range: 0 %'],
    ['{ dead_chip: 101 % }', 'share-range: 101 %'],
    ['{ dead_chip: half }', 'share-form: half'],
    ['[dead_chip]', 'wrong-shape: [dead_chip]'],
  ])('is refused as %s', (brings, problem) => {
    const { facts, told } = spike(brings);
    expect(told).toEqual([problem]);
    expect(facts.faults[0]).not.toHaveProperty('brings');
  });

  test('offers the fault that was probably meant', () => {
    const [problem] = spike('{ dead_chp: 50 % }').diagnostics.filter(({ code }) => code === 'no-fault-named');
    expect(problem).toMatchObject({ near: ['dead_chip'], fix: { edits: [{ insert: 'dead_chip' }] } });
  });
});

describe('families of faults', () => {
  const two = (one: string, other: string) =>
    factsOf(
      faults(
        `a: { is: a, shows: { v5: low }, family: ${one} }\nb: { is: b, shows: { v5: low }, family: ${other} }`,
      ),
    );

  test('are plain words, and as many faults as belong to one may share it', () => {
    const { facts, told } = two('power-supply', 'power-supply');
    expect(told).toEqual([]);
    expect(facts.faults.map(({ family }) => family)).toEqual(['power-supply', 'power-supply']);
  });

  test('are told where two differ by a slip of the hand', () => {
    const { told, diagnostics } = two('contacts', 'contcats');
    expect(told).toEqual(['near-family: contcats']);
    expect(diagnostics.find(({ code }) => code === 'near-family')).toMatchObject({
      near: ['contacts'],
      fix: { edits: [{ insert: 'contacts' }] },
    });
  });

  test('are not told where one only begins like another', () => {
    expect(two('memory', 'memory-socket').told).toEqual([]);
  });

  test('are compared with those of other files', () => {
    const shared = sharedOf(faults('a: { is: a, shows: { v5: low }, family: clock }'));
    const { told } = factsOf(
      faults('b: { is: b, shows: { v5: low }, family: clocks }').replace(readings, ''),
      undefined,
      shared.facts,
    );
    expect(told.filter((each) => !each.startsWith('missing-key'))).toEqual(['near-family: clocks']);
  });

  test.each([
    ['bad contacts', 'name-form: bad contacts'],
    ['otherwise', 'reserved-word: otherwise'],
    ['[clock]', 'wrong-shape: [clock]'],
  ])('are refused as %s', (word, problem) => {
    expect(two(word, 'clock').told).toEqual([problem]);
  });
});

const tree = (more: { odds?: string; spike?: string } = {}): string => `---
format: 1
kind: tree
title: T
symptom: S
boards: [x]
${more.odds ?? ''}
readings:
  v5: { is: v, unit: V, expect: 5 V ± 5 %, source: s }
faults:
  spike: { is: s, shows: { v5: high }, ${more.spike ?? 'source: s'} }
  dead_chip: { is: d, shows: { v5: low } }
---

## A

Read \`v5\`.

- high → [Spike](#spike)
- otherwise → [Dead](#dead)

## Spike

Fault \`spike\`.

Mend it.

Prove \`v5\`.

## Dead

Fault \`dead_chip\`.

Mend it.

Prove \`v5\`.
`;

describe('a compiled tree', () => {
  const compiled = (more?: Parameters<typeof tree>[0]) => {
    const { tree: made, diagnostics } = compileTree(tree(more), { id: 'a' });
    expect(diagnostics).toEqual([]);
    return made;
  };

  test('carries odds only where the tree says so, and then is another tree', () => {
    expect(compiled()).not.toHaveProperty('odds');
    const said = compiled({ odds: 'odds: { slip: 3 % }' });
    expect(said?.odds).toEqual({ ...usualOdds, slip: 0.03 });
    expect(said?.digest).not.toBe(compiled()?.digest);
    expect(said?.digest).not.toBe(compiled({ odds: 'odds: { slip: 4 % }' })?.digest);
  });

  test('with odds, faults brought along and families keeps to its schema, and breaks it with shares that are none', () => {
    const full = compiled({
      odds: 'odds: { slip: 3 % }',
      spike: 'family: supply, brings: { dead_chip: 30 % }',
    });
    expect(full?.faults[0]).toMatchObject({ family: 'supply', brings: { dead_chip: 0.3 } });
    expect(problemsOfCompiledTree(full)).toEqual([]);
    const [spike, ...others] = full?.faults ?? [];
    expect(
      problemsOfCompiledTree({ ...full, faults: [{ ...spike, brings: { dead_chip: 30 } }, ...others] }),
    ).not.toEqual([]);
    expect(problemsOfCompiledTree({ ...full, odds: { ...full?.odds, slip: 0 } })).not.toEqual([]);
    expect(problemsOfCompiledTree({ ...full, odds: { slip: 0.02 } })).not.toEqual([]);
  });

  test('is another tree by what a fault brings along, and the same by what family it is of', () => {
    const plain = compiled()?.digest;
    expect(compiled({ spike: 'brings: { dead_chip: 30 % }' })?.digest).not.toBe(plain);
    expect(compiled({ spike: 'family: supply' })?.digest).toBe(plain);
  });
});

describe('a fault of a shared file', () => {
  const shared = `---
format: 1
kind: shared
title: S
readings:
  v5: { is: v, unit: V, expect: 5 V ± 5 %, source: s }
faults:
  spike: { is: s, shows: { v5: high }, brings: { dead_chip: 30 %, dead_slot: 10 % } }
  dead_chip: { is: d, shows: { v5: low } }
  dead_slot: { is: d, shows: { v5: low } }
---

# S
`;
  const library = {
    text: (path: string) => (path === 's.md' ? shared : null),
    picture: () => null,
    paths: () => ['s.md'],
  };
  const own = tree().replace(/readings:[\s\S]*?\n---/, 'uses: [s.md]\n---');

  test('brings along those that the tree is about, and says nothing of the others', () => {
    const { tree: made, diagnostics } = compileTree(own, { id: 'a', library });
    expect(diagnostics).toEqual([]);
    expect(made?.faults.map(({ id, brings }) => [id, brings])).toEqual([
      ['spike', { dead_chip: 0.3 }],
      ['dead_chip', undefined],
    ]);
  });

  test('is missed where a fault of the tree itself brings it along', () => {
    const more = own.replace(
      'uses: [s.md]\n',
      'uses: [s.md]\nfaults:\n  surge: { is: s, shows: { v5: high }, brings: { dead_slot: 10 % } }\n',
    );
    const { diagnostics } = compileTree(more.replace('Fault `spike`', 'Fault `surge`'), { id: 'a', library });
    expect(diagnostics).toMatchObject([
      { code: 'brought-without-section', fault: 'surge', brought: 'dead_slot' },
    ]);
  });
});
