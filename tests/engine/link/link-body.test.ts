import { describe, expect, test } from 'vitest';
import { bodyWords } from '../../../engine/diagnostics/body-words.ts';
import { alone } from '../../../engine/link/beside.ts';
import { checkFileKind } from '../../../engine/link/check-file-kind.ts';
import { linkContext } from '../../../engine/link/link-context.ts';
import { resolveCondition } from '../../../engine/link/resolve-condition.ts';
import { parseCondition } from '../../../engine/read/parse-condition.ts';
import { readSection } from '../../../engine/read/read-section.ts';
import { plainReading } from '../../helpers/plain-reading.ts';
import { factsOf, linkedTree, type ShortFacts } from '../../helpers/small-tree.ts';

const facts: ShortFacts = {
  readings: {
    v5: 'none low *good high',
    lines: 'each A0 A1 A2: *moves stuck floats',
    rails: 'each V5 V12: *good *fair low',
    starts: 'tries 20',
  },
  settings: { cpu: 'dual-rail single-rail' },
  faults: { chip: 'v5 low' },
  conditions: { cards: 'in out', cpu_socket: 'full empty' },
};

const stops = '\n\n## B\n\nStop: b.\n\n## C\n\nStop: c.\n';
const check = (...lines: string[]): string =>
  `## A\n\nRead \`v5\`, \`lines\`, \`rails\`.\n\n${lines.map((line) => `- ${line}`).join('\n')}${stops}`;
const task = (...paragraphs: string[]): string =>
  `## A\n\n${paragraphs.join('\n\n')}\n\nThen → [B](#b)${stops}`;
const fault = (...paragraphs: string[]): string => `## A\n\nFault \`chip\`.\n\n${paragraphs.join('\n\n')}`;

const problems = (body: string): string[] =>
  linkedTree(facts, body).diagnostics.map(({ code, span }) => `${code} "${body.slice(span.from, span.to)}"`);

const fixes = (body: string): (string | undefined)[] =>
  linkedTree(facts, body).diagnostics.map(({ fix }) => fix?.edits[0]?.insert);

const first = (body: string) => linkedTree(facts, body).tree.sections[0]?.section;

const allWrong = ['one', 'several', 'all'].flatMap((many) => [`${many}-stuck`, `${many}-floats`]);

describe('conditions on many alike', () => {
  test.each([
    ['any lines are stuck', ['one-stuck', 'several-stuck', 'all-stuck', 'stuck+floats']],
    ['any of lines are stuck or floats', [...allWrong, 'stuck+floats']],
    ['one lines is floats', ['one-floats']],
    ['several lines are stuck', ['several-stuck']],
    ['all lines are stuck', ['all-stuck']],
    ['all lines are moves', ['all-normal']],
    ['lines is all-normal', ['all-normal']],
    ['lines is not all-normal', [...allWrong, 'stuck+floats']],
    ['any lines are stuck and any lines are floats', ['stuck+floats']],
  ])('take "%s" for the bands of the whole', (condition, bands) => {
    const body = check(`${condition} → [B](#b)`, 'otherwise → [C](#c)');
    expect(problems(body)).toEqual([]);
    const section = first(body);
    const outcome = section?.kind === 'check' ? section.outcomes[0]?.condition : undefined;
    const found = outcome?.kind === 'bands' ? [...(outcome.bands.lines ?? [])] : [];
    expect(found.toSorted()).toEqual(bands.toSorted());
  });

  test('are in their normal band where all is good', () => {
    const section = first(check('all good → [B](#b)', 'otherwise → [C](#c)'));
    expect(section?.kind === 'check' && section.outcomes[0]?.condition).toEqual({
      kind: 'bands',
      bands: { v5: ['good'], lines: ['all-normal'], rails: ['all-normal'] },
    });
  });

  test.each([
    ['any v5 are low', 'not-many "v5"'],
    ['any cpu are dual-rail', 'not-many "cpu"'],
    ['any linse are stuck', 'nothing-named "linse"'],
    ['any lines are stcuk', 'no-band-named "stcuk"'],
    ['lines is stuck', 'how-many "stuck"'],
    ['any stuck', 'condition-word "any stuck"'],
    ['lines is moves', 'how-many "moves"'],
    ['any lines are moves', 'members-untold "lines are moves"'],
    ['one lines is stuck, floats', 'members-untold "lines is stuck, floats"'],
    ['several rails are low', 'members-untold "rails are low"'],
    ['all rails are good', 'members-untold "rails are good"'],
    ['all lines are moves and any lines are stuck', 'clauses-exclude "stuck"'],
  ])('are refused in "%s"', (condition, problem) => {
    expect(problems(check(`${condition} → [B](#b)`, 'otherwise → [C](#c)'))).toEqual([problem]);
  });

  test('are offered for a band that does not say of what', () => {
    expect(fixes(check('any stuck → [B](#b)', 'otherwise → [C](#c)'))).toEqual(['any lines are stuck']);
  });

  test('are refused with what can be asked', () => {
    const [found] = linkedTree(
      facts,
      check('one rails is good → [B](#b)', 'otherwise → [C](#c)'),
    ).diagnostics;
    expect(found?.code === 'members-untold' && bodyWords['members-untold'].mend(found)).toBe(
      'What can be told is "all rails are good, fair", "any rails are low", "one rails are low", "all rails are low"',
    );
    const [many] = linkedTree(facts, check('lines is moves → [B](#b)', 'otherwise → [C](#c)')).diagnostics;
    expect(many?.code === 'how-many' && many.told).toEqual(['all lines are moves']);
  });
});

describe('conditions on the ends of a call', () => {
  const call = {
    ...plainReading(
      'find-the-short',
      { kind: 'options', options: ['found', 'not-found'].map((name) => ({ name, means: null })) },
      'any',
    ),
    call: true,
  };
  const resolve = (text: string) => {
    const context = linkContext(factsOf(facts), new Map(), alone);
    const { condition } = parseCondition(text);
    const names = { names: [call.id], readings: [call] };
    return {
      condition: condition && resolveCondition(condition, names, 0, context),
      codes: context.diagnostics.map(({ code }) => code),
    };
  };

  test.each([
    ['found', ['found']],
    ['not found', ['not-found']],
    ['not-found', ['not-found']],
    ['found or not-found', ['found', 'not-found']],
  ])('take "%s" for ends', (text, bands) => {
    const condition = { kind: 'bands', bands: { 'find-the-short': bands } };
    expect(resolve(text)).toEqual({ condition, codes: [] });
  });

  test.each([
    ['lost', 'no-band-named'],
    ['all good', 'nothing-to-judge'],
  ])('refuse "%s"', (text, code) => {
    expect(resolve(text)).toEqual({ condition: null, codes: [code] });
  });
});

describe('the conditions of a task', () => {
  test('are those that the front-matter declares', () => {
    const body = task('Do, 3 minutes, cards out, cpu_socket empty: take them out.');
    expect(problems(body)).toEqual([]);
    expect(first(body)).toMatchObject({ kind: 'task', sets: { cards: 'out', cpu_socket: 'empty' } });
  });

  test.each([
    ['card out', 'no-condition-named "card"', 'cards'],
    ['slots out', 'no-condition-named "slots"', undefined],
    ['cards ot', 'no-value-named "ot"', 'out'],
    ['cards gone', 'no-value-named "gone"', undefined],
  ])('are refused as "%s"', (pair, problem, fix) => {
    const body = task(`Do, ${pair}: take them out.`);
    expect(problems(body)).toEqual([problem]);
    expect(fixes(body)).toEqual([fix]);
    expect(first(body)).toMatchObject({ sets: {} });
  });
});

describe('what must have been seen before', () => {
  test.each([
    ['`v5` is good', [{ reading: 'v5', bands: ['good'] }]],
    ['`v5` is not none or low', [{ reading: 'v5', bands: ['good', 'high'] }]],
    [
      '`lines` is all-normal and `starts` is always, sometimes',
      [
        { reading: 'lines', bands: ['all-normal'] },
        { reading: 'starts', bands: ['sometimes', 'always'] },
      ],
    ],
    ['all `lines` are moves', [{ reading: 'lines', bands: ['all-normal'] }]],
    ['`v5` is not none and `v5` is not high', [{ reading: 'v5', bands: ['low', 'good'] }]],
  ])('is, by "Only if %s", a band of each reading', (clauses, needs) => {
    for (const body of [
      task('Do: it.', `Only if ${clauses}.`),
      fault(`Only if ${clauses}.`, 'Mend.', 'Prove `v5`.'),
    ]) {
      expect(problems(body)).toEqual([]);
      expect(first(body)).toMatchObject({ onlyIf: needs });
    }
  });

  test.each([
    ['`v55` is good', 'no-reading-named "v55"', 'v5'],
    ['`cpu` is dual-rail', 'setting-not-seen "cpu"', undefined],
    ['`v5` is godo', 'no-band-named "godo"', 'good'],
    ['`lines` is stuck', 'how-many "stuck"', undefined],
    ['`v5` is good and `v5` is low', 'clauses-exclude "low"', undefined],
  ])('is refused as "Only if %s"', (clauses, problem, fix) => {
    const body = task('Do: it.', `Only if ${clauses}.`);
    expect(problems(body)).toEqual([problem]);
    expect(fixes(body)).toEqual([fix]);
  });
});

describe('the tries of a proof', () => {
  test('are kept with the reading that counts them', () => {
    const body = fault('Mend.', 'Prove `v5`, 30 of 30 `starts`.');
    expect(problems(body)).toEqual([]);
    expect(first(body)).toMatchObject({ proof: ['v5', 'starts'], proofTries: { starts: 30 } });
  });

  test.each([
    ['Prove 20 of 20 `v5`.', 'tries-not-counted "v5"', {}],
    ['Prove 5 of 5 `starts`.', 'too-few-tries "starts"', { starts: 5 }],
  ])('are complained of in "%s"', (line, problem, proofTries) => {
    const body = fault('Mend.', line);
    expect(problems(body)).toEqual([problem]);
    expect(first(body)).toMatchObject({ proofTries });
  });
});

describe('checkFileKind()', () => {
  const sections = [
    'Read `v5`.\n\n- otherwise → [A](#a)',
    'End `found`.',
    'Fault `chip`.\n\nMend.',
    'Stop: here.',
  ].map((text, index) => ({ from: index * 1000, syntax: readSection(`## A\n\n${text}`).value }));

  test.each([
    ['tree', ['End 1006']],
    ['procedure', ['Fault 2006']],
    ['shared', ['Read 6', 'End 1006', 'Fault 2006', 'Stop 3006']],
  ] as const)('reports the sections that a %s does not have', (kind, expected) => {
    const context = linkContext(factsOf(facts), new Map(), alone);
    checkFileKind(sections, kind, context);
    expect(
      context.diagnostics.map((each) => each.code === 'wrong-file-kind' && `${each.word} ${each.span.from}`),
    ).toEqual(expected);
  });
});
