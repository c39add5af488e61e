import { describe, expect, test } from 'vitest';
import { linkedTree, type ShortFacts } from '../../helpers/small-tree.ts';

const facts: ShortFacts = {
  readings: { v5: 'none low *good high', pg: 'low *high', seen: '?yes no', constructor: '*good bad' },
  settings: { cpu: 'dual-rail single-rail', fsb: '= MHz' },
  faults: { resistor: 'v5 low', chip: 'pg low' },
};

const ends = '\n\n## B\n\nStop: b.\n\n## C\n\nStop: c.\n';
const check = (read: string, ...lines: string[]): string =>
  `## A\n\n${read}\n\n${lines.map((line) => `- ${line}`).join('\n')}${ends}`;

const problems = (body: string): string[] =>
  linkedTree(facts, body).diagnostics.map(({ code, span }) => `${code} "${body.slice(span.from, span.to)}"`);

const conditions = (body: string) => {
  const [first] = linkedTree(facts, body).tree.sections;
  return first?.section.kind === 'check' ? first.section.outcomes.map(({ condition }) => condition) : [];
};

describe('linkTree()', () => {
  test.each([
    ['Read `v5`.', 'low, none', { v5: ['none', 'low'] }],
    ['Read `v5`.', 'not good', { v5: ['none', 'low', 'high'] }],
    ['Read `v5`, `pg`.', 'all good', { v5: ['good'], pg: ['high'] }],
    ['Read `v5`, `seen`.', 'all good', { v5: ['good'] }],
    ['Read `v5`, `pg`.', 'v5 is not good and pg is low', { v5: ['none', 'low', 'high'], pg: ['low'] }],
    ['Read `v5`, `pg`.', 'v5 is not good and v5 is not none', { v5: ['low', 'high'] }],
    ['Read `v5`.', 'good and cpu is dual-rail', { v5: ['good'], cpu: ['dual-rail'] }],
    ['Read `constructor`.', 'bad', { constructor: ['bad'] }],
  ])('resolves, after %s, "%s"', (read, condition, bands) => {
    const body = check(read, `${condition} → [B](#b)`, 'otherwise → [C](#c)');
    expect(problems(body)).toEqual([]);
    expect(conditions(body)).toEqual([{ kind: 'bands', bands }, { kind: 'otherwise' }]);
  });

  test.each([
    ['an unknown reading', check('Read `v6`.', 'otherwise → [B](#b)'), 'no-reading-named "v6"'],
    ['an unknown section', check('Read `v5`.', 'otherwise → [B](#bb)'), 'no-section-named "#bb"'],
    ['an unknown section in prose', '## A\n\nSee [there](#there).\n\nStop: a.', 'no-section-named "#there"'],
    ['an unknown fault', '## A\n\nMend.\n\nFault `chips`.\n\nProve `v5`.', 'no-fault-named "chips"'],
    ['an unknown name', check('Read `v5`.', 'v55 is low → [B](#b)'), 'nothing-named "v55"'],
    ['an unknown band', check('Read `v5`.', 'lov → [B](#b)'), 'no-band-named "lov"'],
    ['a bare band of two readings', check('Read `v5`, `pg`.', 'good → [B](#b)'), 'bare-band "good"'],
    ['a reading that is not read', check('Read `v5`.', 'pg is low → [B](#b)'), 'not-read-here "pg"'],
    [
      'a setting without options',
      check('Read `v5`.', 'fsb is low → [B](#b)'),
      'setting-without-options "fsb"',
    ],
    [
      'all good of nothing judged',
      check('Read `seen`.', 'all good → [B](#b)'),
      'nothing-to-judge "all good"',
    ],
    [
      'clauses that exclude each other',
      check('Read `v5`.', 'v5 is low and v5 is high → [B](#b)'),
      'clauses-exclude "high"',
    ],
    ['not any band', check('Read `pg`.', 'not low or high → [B](#b)'), 'clauses-exclude "low"'],
    ['another word for otherwise', check('Read `v5`.', 'else → [B](#b)'), 'condition-word "else"'],
    [
      'two cannot-read lines',
      check('Read `v5`.', 'cannot read → [B](#b)', 'cannot read → [C](#c)'),
      'cannot-read-twice "cannot read"',
    ],
    ['equal slugs', '## 5 V\n\nStop: a.\n\n## +5 V\n\nStop: b.', 'equal-slugs "## 5 V"'],
    ['another title', '# Another\n\n## A\n\nStop: a.', 'title-differs "# Another"'],
    ['a brace', '## A\n\nAt {fsb * 2} or {x}.\n\nStop: a.', 'brace-value "{fsb * 2}"'],
    ['a formula that is none', '## A\n\nAt `= fsb *`.\n\nStop: a.', 'formula-syntax ""'],
    ['a formula with an unknown name', '## A\n\nAt `= fbs * 2`.\n\nStop: a.', 'unknown-name "fbs"'],
  ])('reports %s, and nothing besides', (_what, body, problem) => {
    const found = problems(body);
    if (problem.startsWith('equal-slugs'))
      expect(found).toEqual(['equal-slugs "## +5 V"'].map(() => found[0]));
    else expect(found).toEqual([problem]);
  });

  test('points from the second of two equal slugs to the first', () => {
    const body = '## 5 V\n\nStop: a.\n\n## +5 V\n\nStop: b.';
    const [found] = linkedTree(facts, body).diagnostics;
    expect(found && [body.slice(found.span.from, found.span.to), found.related]).toEqual([
      '## +5 V',
      { from: 0, to: 6 },
    ]);
  });

  test('offers what was probably meant, and a fix where it is certain', () => {
    const body = check('Read `v5`.', 'hig → [B](#b)', 'Good → [C](#c)', 'otherwise → [B](#B)');
    const found = linkedTree(facts, body).diagnostics;
    expect(found.map((each) => ('near' in each ? each.near : []))).toEqual([['high'], ['good'], ['b']]);
    expect(found.map(({ fix }) => fix?.edits[0]?.insert)).toEqual(['high', 'good', '#b']);
  });

  test('offers "all good" for a bare "good" of several readings, and the reading for any other band', () => {
    const fixes = (line: string) =>
      linkedTree(facts, check('Read `v5`, `pg`.', line, 'otherwise → [C](#c)')).diagnostics.map(
        ({ fix }) => fix?.edits[0]?.insert,
      );
    expect(fixes('good → [B](#b)')).toEqual(['all good']);
    expect(fixes('none → [B](#b)')).toEqual(['v5 is none']);
    expect(fixes('low → [B](#b)')).toEqual([undefined]);
  });

  test('turns code spans into values where they name or compute with settings', () => {
    const body = '## A\n\nAt `fsb`, `= fsb * 2`, not `v5`.\n\n> **Notice** Set `cpu`.\n\nStop: at `fsb`.';
    expect(problems(body)).toEqual([]);
    expect(linkedTree(facts, body).tree.sections[0]?.section).toMatchObject({
      blocks: [
        {
          children: [
            { value: 'At ' },
            { type: 'value', written: 'fsb', formula: { kind: 'name', name: 'fsb' } },
            { value: ', ' },
            { type: 'value', written: '= fsb * 2', formula: { kind: 'binary', operator: '*' } },
            { value: ', not ' },
            { type: 'code', value: 'v5' },
            { value: '.' },
          ],
        },
      ],
      hazards: [
        { blocks: [{ children: [{ value: 'Set ' }, { type: 'value', written: 'cpu' }, { value: '.' }] }] },
      ],
      reason: [{ value: 'at ' }, { type: 'value', written: 'fsb' }, { value: '.' }],
    });
  });

  test('gives a task without a time the minutes of the tree', () => {
    const { tree } = linkedTree(facts, '## A\n\nDo: it.\n\nThen → [B](#b)\n\n## B\n\nStop: b.');
    expect(tree.sections[0]?.section).toMatchObject({ kind: 'task', minutes: 2, wait: 0, target: 'b' });
  });

  test('follows percent-encoded links', () => {
    const { tree, diagnostics } = linkedTree(
      facts,
      '## A\n\nDo: it.\n\nThen → [B](#prüfen-%C3%BC)\n\n## Prüfen ü\n\nStop: b.',
    );
    expect(diagnostics).toEqual([]);
    expect(tree.sections[0]?.section).toMatchObject({ target: 'prüfen-ü' });
  });

  test('says what it could not understand everywhere', () => {
    expect([...linkedTree(facts, '## A\n\nNothing.').tree.open].toSorted()).toEqual([
      'faults',
      'readings',
      'ways',
    ]);
    expect([...linkedTree(facts, '## A\n\nMend.\n\nFault `x`.').tree.open]).toEqual(['faults']);
    expect([...linkedTree(facts, '## A\n\nDo: it.').tree.open]).toEqual(['ways']);
    expect([...linkedTree(facts, '## A\n\nStop: it.').tree.open]).toEqual([]);
  });
});
