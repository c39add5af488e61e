import { describe, expect, test } from 'vitest';
import { checkRules } from '../../../engine/rules/index.ts';
import { shortBody as body } from '../../helpers/short-body.ts';
import { linkedTree, type ShortFacts } from '../../helpers/small-tree.ts';

const readings = { v5: 'none low *good high', pg: 'low *high' };
const base: ShortFacts = { readings, settings: { cpu: 'dual single' }, faults: { x: 'v5 low' } };

const problems = (facts: ShortFacts, text: string) => {
  const { tree, diagnostics } = linkedTree(facts, text);
  expect(diagnostics.filter(({ code }) => code !== 'no-section-named')).toEqual([]);
  return checkRules(tree);
};
const codes = (facts: ShortFacts, text: string) => problems(facts, text).map(({ code }) => code);

const end = ['X: Fault x', 'S: Stop'];

describe('the rules', () => {
  test('have nothing to say about a sound tree', () => {
    const text = body(
      'A: Read v5; low, none → X; otherwise → B',
      'B: Read pg; low and cpu is dual → X; otherwise → S',
      ...end,
    );
    expect(problems(base, text)).toEqual([]);
  });

  test('name a combination that leads nowhere', () => {
    const text = body(
      'A: Read v5 pg; v5 is low, none and pg is low → X; all good → S; v5 is high → S',
      ...end,
    );
    const used = { ...base, settings: {} };
    expect(problems(used, text)).toMatchObject([
      {
        code: 'uncovered-combination',
        example: [
          { name: 'v5', band: 'good' },
          { name: 'pg', band: 'low' },
        ],
        combinations: 3,
      },
    ]);
  });

  test('leave names out of the example that do not matter', () => {
    const text = body(
      'A: Read v5 pg; v5 is low, none, good → X; pg is low and cpu is dual → S; pg is low → S',
      ...end,
    );
    expect(problems(base, text)).toMatchObject([
      {
        example: [
          { name: 'v5', band: 'high' },
          { name: 'pg', band: 'high' },
        ],
        combinations: 2,
      },
    ]);
  });

  test('count the options of settings among the combinations', () => {
    const text = body('A: Read pg; low → X; high and cpu is dual → S', ...end);
    expect(problems(base, text)).toMatchObject([
      {
        code: 'uncovered-combination',
        example: [
          { name: 'pg', band: 'high' },
          { name: 'cpu', band: 'single' },
        ],
        combinations: 1,
      },
    ]);
  });

  test('do not count "cannot read" as an outcome of any band', () => {
    const text = body('A: Read pg; low → X; cannot read → S', ...end);
    expect(codes({ ...base, settings: {} }, text)).toEqual(['uncovered-combination']);
  });

  test('find lines that the lines above them have emptied', () => {
    const text = body('A: Read v5; low → X; not good → S; low, none → S; good → X; otherwise → S', ...end);
    expect(problems({ ...base, settings: {} }, text)).toMatchObject([
      { code: 'outcome-never-matches', written: 'low, none' },
      { code: 'outcome-never-matches', written: 'otherwise' },
    ]);
  });

  test('find lines below "otherwise", but leave "cannot read" alone', () => {
    const text = body('A: Read v5; otherwise → X; low → S; cannot read → S', ...end);
    expect(problems({ ...base, settings: {} }, text)).toMatchObject([
      { code: 'outcome-never-matches', written: 'low' },
    ]);
  });

  test('refuse a check whose combinations nobody could look through', () => {
    const names = Array.from({ length: 10 }, (_, index) => `r${index}`);
    const many = Object.fromEntries(names.map((name) => [name, '*a b c d e f g h i j k l']));
    const bands = [...'abcdefghijkl'];
    const lines = bands.map(
      (_, line) =>
        `${names.map((name, at) => `${name} is not ${bands[(line * (at + 1)) % 12]}`).join(' and ')} → X`,
    );
    const text = body(`A: Read ${names.join(' ')}; ${lines.join('; ')}; otherwise → S`, ...end);
    const facts = { readings: { ...readings, ...many }, faults: { x: 'v5 low' } };
    expect(codes(facts, text)).toEqual(['too-many-combinations']);
  });

  test('find sections that nothing leads to', () => {
    const text = body('A: Do → X', 'B: Do → C', 'C: Stop', 'X: Fault x');
    expect(problems({ ...base, settings: {} }, text)).toMatchObject([
      { code: 'unreachable-section', title: 'B' },
      { code: 'unreachable-section', title: 'C' },
    ]);
  });

  test('find loops without a way on, once each', () => {
    const text = body(
      'A: Read pg; low → B; otherwise → X',
      'B: Do → C',
      'C: Read v5; low → D; otherwise → B',
      'D: Do → B',
      'X: Fault x',
    );
    expect(problems({ ...base, settings: {} }, text)).toMatchObject([
      { code: 'no-way-on', titles: ['B', 'C', 'D'] },
    ]);
  });

  test('find a section that only leads to itself', () => {
    expect(
      problems({ ...base, settings: {} }, body('A: Read pg; low → A; otherwise → X', 'X: Fault x')),
    ).toEqual([]);
    expect(problems({ readings }, body('A: Read pg v5; otherwise → A'))).toMatchObject([
      { code: 'no-way-on', titles: ['A'] },
    ]);
  });

  test('tell a loop of work without a reading as such', () => {
    const text = body('A: Read pg; low → B; otherwise → X', 'B: Do → C', 'C: Do → B', 'X: Fault x');
    expect(problems({ ...base, settings: {} }, text)).toMatchObject([
      { code: 'loop-without-reading', titles: ['B', 'C'] },
    ]);
    expect(problems({ ...base, settings: {} }, body('A: Do → A'))).toMatchObject([
      { code: 'loop-without-reading', titles: ['A'] },
      { code: 'fault-without-section' },
      { code: 'unused-reading' },
      { code: 'unused-reading' },
    ]);
  });

  test('ask only for the combinations that some walk can bring', () => {
    const known = body('A: Read pg; low → B; high → X', 'B: Read pg v5; pg is low → S', ...end);
    expect(codes({ ...base, settings: {} }, known)).toEqual([]);
    const changed = body(
      'A: Read pg; low → C; high → X',
      'C: Do → B',
      'B: Read pg v5; pg is low → S',
      ...end,
    );
    expect(problems({ ...base, settings: {} }, changed)).toMatchObject([
      { code: 'uncovered-combination', example: [{ name: 'pg', band: 'high' }] },
    ]);
  });

  test('keep asking for every combination in a section that no walk comes to', () => {
    const text = body('A: Read v5 pg; otherwise → X', 'B: Read pg; low → S', ...end);
    expect(codes({ ...base, settings: {} }, text)).toEqual([
      'uncovered-combination',
      'unreachable-section',
      'unreachable-section',
    ]);
  });

  test('say nothing of what other files brought along and nothing here uses', () => {
    const facts = {
      readings: { ...readings, more: '*a b' },
      settings: { cpu: 'a b' },
      faults: { x: '', y: '' },
    };
    const text = body('A: Read v5 pg; otherwise → X', 'X: Fault x');
    const { tree } = linkedTree(facts, text);
    const foreign = { readings: new Set(['more']), settings: new Set(['cpu']), faults: new Set(['y']) };
    expect(checkRules({ ...tree, facts: { ...tree.facts, foreign } })).toEqual([]);
  });

  test('count a reading as used that another is like, or that must have been seen', () => {
    const { tree } = linkedTree(
      { readings: { ...readings, bare: '*a b', seen: '*a b' }, faults: { x: '' } },
      body('A: Read pg; otherwise → X', 'X: Fault x').replace(', `pg`', ''),
    );
    const changed = tree.facts.readings.map((reading) =>
      reading.id === 'pg'
        ? { ...reading, like: 'bare', onlyIf: [{ reading: 'seen', bands: ['a'] }] }
        : reading,
    );
    expect(checkRules({ ...tree, facts: { ...tree.facts, readings: changed } })).toEqual([]);
  });

  test('say nothing about ways while a link is broken', () => {
    const text = body('A: Do → Nowhere', 'B: Stop', 'X: Fault x');
    expect(codes({ ...base, settings: {} }, text)).toEqual([]);
  });

  test('ask for exactly one section for every fault', () => {
    const facts = { readings, faults: { x: '', y: '' } };
    const text = body('A: Read v5; low → X; otherwise → Z', 'X: Fault x', 'Z: Fault x');
    expect(problems(facts, text)).toMatchObject([
      { code: 'fault-with-two-sections', fault: 'x', first: 'X', related: { from: expect.any(Number) } },
      { code: 'fault-without-section', fault: 'y' },
    ]);
  });

  test('ask for a proof', () => {
    const text = body('A: Read v5 pg; otherwise → X', 'X: Unproved x');
    expect(problems({ ...base, settings: {} }, text)).toMatchObject([
      { code: 'end-without-proof', title: 'X' },
    ]);
  });

  test('find readings and settings that nothing uses', () => {
    const facts = {
      readings: { ...readings, more: '*a b', seen: '?a b' },
      settings: { cpu: 'a b', fsb: '= MHz' },
      faults: { x: '' },
      given: { seen: 'a' },
    };
    const text = body('A: Read v5; otherwise → X', 'X: Fault x').replace('Mend.', 'At `= fsb * 2`.');
    expect(problems(facts, text)).toMatchObject([
      { code: 'unused-reading', reading: 'more' },
      { code: 'unused-setting', setting: 'cpu' },
    ]);
  });

  test('ask every fault to be able to show the symptom', () => {
    const facts = { readings, faults: { x: 'pg low', y: 'v5 low', z: 'v5 none' }, given: { pg: 'low' } };
    const text = body(
      'A: Read v5 pg; v5 is low → X; v5 is none → Y; otherwise → Z',
      'X: Fault x',
      'Y: Fault y',
      'Z: Fault z',
    );
    expect(problems(facts, text)).toMatchObject([
      { code: 'symptom-not-shown', fault: 'y', reading: 'pg', band: 'low' },
      { code: 'symptom-not-shown', fault: 'z', reading: 'pg', band: 'low' },
    ]);
  });
});
