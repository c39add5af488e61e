import { describe, expect, test } from 'vitest';
import { analyse } from '../../../engine/analysis/analyse.ts';
import type { Reading } from '../../../engine/model/reading.ts';
import type { TaskSection } from '../../../engine/model/section.ts';
import { walkableOf } from '../../../engine/paths/paths-of.ts';
import { walkPaths } from '../../../engine/paths/walk-paths.ts';
import { checkRules } from '../../../engine/rules/index.ts';
import { bandsOf } from '../../../engine/scale/index.ts';
import { possibleOnAnyBoard } from '../../../engine/suspects/possible-on-any-board.ts';
import { shortBody } from '../../helpers/short-body.ts';
import { linkedTree, type ShortFacts } from '../../helpers/small-tree.ts';

const readings = { v5: 'none low *good high', pg: 'low *high' };
const base: ShortFacts = { readings, faults: { x: 'v5 low' } };
const end = ['X: Fault x', 'S: Stop'];

interface More {
  readonly readings?: Readonly<Record<string, Partial<Reading>>>;
  /** What the task of a section sets: `{ b: { cards: 'out' } }`. */
  readonly sets?: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly tools?: readonly string[];
}

function found(facts: ShortFacts, lines: readonly string[], more: More = {}) {
  const { tree, diagnostics } = linkedTree(facts, shortBody(...lines));
  expect(diagnostics).toEqual([]);
  const sections = tree.sections.map((linked) =>
    linked.section.kind === 'task'
      ? {
          ...linked,
          section: { ...linked.section, sets: more.sets?.[linked.section.id] ?? {} } satisfies TaskSection,
        }
      : linked,
  );
  const changed = tree.facts.readings.map((reading) => ({ ...reading, ...more.readings?.[reading.id] }));
  const known = { ...tree, sections, facts: { ...tree.facts, readings: changed, tools: more.tools ?? null } };
  expect(checkRules(known).filter(({ code }) => code === 'no-way-on')).toEqual([]);
  return analyse(known);
}

const problems = (...args: Parameters<typeof found>) => found(...args).diagnostics;

describe('the outcomes on all walks', () => {
  test('are told where what is known leaves nothing for them', () => {
    const lines = [
      'A: Read v5; low → B; otherwise → S',
      'B: Read v5 pg; v5 is good → S; otherwise → X',
      ...end,
    ];
    expect(problems(base, lines)).toEqual([
      {
        code: 'outcome-never-on-a-walk',
        written: 'v5 is good',
        known: { name: 'v5', bands: ['low'] },
        span: expect.anything(),
      },
    ]);
  });

  test('may all be taken where work lies in between, or the way leads back up', () => {
    const work = [
      'A: Read v5; low → C; otherwise → S',
      'C: Do → B',
      'B: Read v5 pg; v5 is good → S; otherwise → X',
    ];
    expect(problems(base, [...work, ...end])).toEqual([]);
    const back = [
      'A: Read v5 pg; v5 is good → S; v5 is low → X; otherwise → B',
      'B: Read pg; low → A; otherwise → S',
    ];
    expect(problems(base, [...back, ...end])).toEqual([]);
  });

  test('are not told a second time where their own check shows it', () => {
    const lines = ['A: Read v5; low → X; low → S; otherwise → S', ...end];
    expect(problems(base, lines)).toEqual([]);
  });

  test('are told with the sections behind them that nobody enters', () => {
    const lines = [
      'A: Read v5; low → B; otherwise → S',
      'B: Read v5 pg; v5 is good → C; otherwise → X',
      'C: Do → S',
      ...end,
    ];
    expect(problems(base, lines)).toMatchObject([
      { code: 'outcome-never-on-a-walk' },
      { code: 'section-never-entered', title: 'C' },
    ]);
  });

  test('keep a setting for the whole walk, whatever is done on it', () => {
    const facts = { ...base, settings: { cpu: 'dual single' } };
    const lines = [
      'A: Read pg; cpu is dual → B; otherwise → S',
      'B: Do → C',
      'C: Read v5; cpu is single → S; otherwise → X',
      ...end,
    ];
    expect(problems(facts, lines).filter(({ code }) => code !== 'fault-partly-found')).toMatchObject([
      { code: 'outcome-never-on-a-walk', known: { name: 'cpu', bands: ['dual'] } },
    ]);
  });

  test('are not looked at while names and links do not hold together', () => {
    const { tree } = linkedTree(base, shortBody('A: Read v5; low → Nowhere; otherwise → X', ...end));
    expect(analyse(tree)).toEqual({ diagnostics: [], faults: [], notExact: [] });
  });
});

describe('computed readings', () => {
  const bigger: Reading['from'] = {
    kind: 'compare',
    operator: '>',
    left: { kind: 'name', name: 'v5' },
    right: { kind: 'name', name: 'v12' },
  };
  const scale = (limits: readonly [string, string]) => ({
    written: '',
    bands: ['low', 'good', 'high'],
    limits: limits.map((value) => ({ kind: 'quantity' as const, value, unit: 'V' })),
    byMagnitude: false,
    nominal: null,
  });
  const facts: ShortFacts = {
    readings: { v5: 'low *good high', v12: 'low *good high', over: 'yes *no' },
    faults: { x: 'v5 high' },
  };
  const more: More = {
    readings: {
      v5: { measure: { kind: 'quantity', unit: 'V', scale: scale(['4', '6']) } },
      v12: { measure: { kind: 'quantity', unit: 'V', scale: scale(['10', '14']) } },
      over: { from: bigger },
    },
  };

  test('leave out what cannot follow from their inputs', () => {
    const lines = [
      'A: Read v5 v12 over; over is no → S; v5 is low and over is yes → S; v5 is high and over is yes → X; v12 is low → S; v5 is good and v12 is good → S',
      'X: Fault x',
      'S: Stop',
    ];
    const { tree } = linkedTree(facts, shortBody(...lines).replace(', `pg`', ''));
    const readings = tree.facts.readings.map((reading) => ({ ...reading, ...more.readings?.[reading.id] }));
    const known = { ...tree, facts: { ...tree.facts, readings } };
    expect(checkRules(known)).toEqual([]);
    const walked = walkPaths(walkableOf(known), possibleOnAnyBoard(known.facts)).checks.get('a');
    expect(walked).toEqual({ taken: [true, true, true, true, false], left: [], known: {} });
    const anything = walkPaths(walkableOf(known), (derived) => bandsOf(derived)).checks.get('a');
    expect(anything?.taken).toEqual([true, true, true, true, true]);
    expect(anything?.left).not.toEqual([]);
  });

  test('that rest on settings are not held to the usual values', () => {
    const settings = { bus: '= MHz', rated: '= MHz' };
    const lines = ['A: Read over; yes → X; no → S', ...end];
    const { tree } = linkedTree(
      { ...base, readings: { ...readings, over: 'yes *no' }, settings },
      shortBody(...lines),
    );
    const usual = tree.facts.settings.map((setting) =>
      setting.kind === 'quantity' ? { ...setting, usual: { value: '66000000', unit: 'MHz' } } : setting,
    );
    const from: Reading['from'] = {
      kind: 'compare',
      operator: '>',
      left: { kind: 'name', name: 'bus' },
      right: { kind: 'name', name: 'rated' },
    };
    const computed = tree.facts.readings.map((reading) =>
      reading.id === 'over' ? { ...reading, from } : reading,
    );
    const sets = { bus: { value: '100000000', unit: 'MHz' } };
    const faults = tree.facts.faults.map((fault) => ({ ...fault, sets }));
    const facts = { ...tree.facts, settings: usual, readings: computed };
    expect(analyse({ ...tree, facts: { ...facts, faults } }).diagnostics).toEqual([]);
    expect(analyse({ ...tree, facts }).diagnostics).toMatchObject([
      { code: 'fault-misled', end: { how: 'stop' }, by: [{ name: 'over', band: 'no' }] },
    ]);
  });
});

describe('the walks of a fault', () => {
  test('arrive in a sound tree', () => {
    const analysis = found(base, ['A: Read v5 pg; v5 is low → X; otherwise → S', ...end]);
    expect(analysis).toEqual({
      diagnostics: [],
      faults: [{ fault: 'x', arrives: 1, notFollowed: 0, astray: [] }],
      notExact: [],
    });
  });

  test('are misled by an outcome that takes what the fault shows elsewhere, told with the place where the way parts', () => {
    const facts = { ...base, faults: { x: 'v5 low', y: 'v5 none' } };
    const lines = [
      'A: Read pg; high → B; low → X',
      'B: Read v5; low → Y; otherwise → S',
      'X: Fault x',
      'Y: Fault y',
      'S: Stop',
    ];
    expect(problems(facts, lines)).toMatchObject([
      {
        code: 'fault-misled',
        fault: 'x',
        end: { how: 'other-fault', at: 'Y' },
        parted: 'A',
        by: [{ name: 'pg', band: 'high' }],
        path: ['A', 'B', 'Y'],
      },
      {
        code: 'fault-misled',
        fault: 'y',
        end: { how: 'stop', at: 'S' },
        parted: 'B',
        by: [{ name: 'v5', band: 'none' }],
      },
    ]);
  });

  test('are told with their share where only some arrive', () => {
    const { tree } = linkedTree(base, shortBody('A: Read v5 pg; v5 is low → X; otherwise → S', ...end));
    const shows = [
      {
        reading: 'v5',
        shares: [
          { band: 'low', share: 0.75 },
          { band: 'none', share: 0.25 },
        ],
      },
    ];
    const faults = tree.facts.faults.map((fault) => ({ ...fault, shows }));
    const analysis = analyse({ ...tree, facts: { ...tree.facts, faults } });
    expect(analysis.faults[0]?.arrives).toBeCloseTo(0.75, 12);
    expect(analysis.diagnostics).toMatchObject([
      {
        code: 'fault-partly-found',
        share: 75,
        end: { how: 'stop', at: 'S' },
        by: [{ name: 'v5', band: 'none' }],
      },
    ]);
  });

  test('go round where the board is asked the same again', () => {
    const lines = [
      'A: Read pg; low → X; otherwise → B',
      'B: Do → C',
      'C: Read v5; good → S; otherwise → A',
      ...end,
    ];
    expect(problems(base, lines)).toMatchObject([
      { code: 'fault-misled', end: { how: 'round', loop: ['A', 'B', 'C', 'A'] } },
    ]);
  });

  test('are told once where no walk comes to the section at all', () => {
    const facts = { ...base, faults: { x: 'v5 low', y: 'v5 high' } };
    const lines = [
      'A: Read v5; low → B; otherwise → Y',
      'B: Read v5 pg; v5 is good → X; otherwise → S',
      'X: Fault x',
      'Y: Fault y',
      'S: Stop',
    ];
    expect(problems(facts, lines).filter(({ code }) => code !== 'outcome-never-on-a-walk')).toMatchObject([
      { code: 'fault-unreached', fault: 'x', title: 'X' },
    ]);
  });

  test('are held where what must have been seen comes out otherwise', () => {
    const lines = ['A: Read pg; low → S; otherwise → X', ...end];
    const only = { pg: { onlyIf: [{ reading: 'v5', bands: ['good'] }] } };
    expect(problems(base, lines, { readings: only })).toMatchObject([
      { code: 'fault-misled', end: { how: 'only-if', at: 'A', reading: 'v5', band: 'low' } },
    ]);
  });

  test('are held where the board is in another condition than the reading wants', () => {
    const facts = { ...base, conditions: { cards: 'in out' } };
    const lines = ['A: Read pg; low → S; otherwise → B', 'B: Read v5; low → X; otherwise → S', ...end];
    const more = { readings: { v5: { when: { cards: 'out' } } } };
    expect(problems(facts, lines, more)).toMatchObject([
      {
        code: 'fault-misled',
        end: { how: 'when', at: 'B', reading: 'v5', condition: 'cards', value: 'out' },
      },
      { code: 'condition-not-set', reading: 'v5', condition: 'cards', value: 'out', elsewhere: false },
    ]);
    const pulled = [
      'A: Read pg; low → S; otherwise → C',
      'C: Do → B',
      'B: Read v5; low → X; otherwise → S',
      ...end,
    ];
    expect(problems(facts, pulled, { ...more, sets: { c: { cards: 'out' } } })).toEqual([]);
  });

  test('say for the section of a fault that the ways are too many to follow', () => {
    const names = Array.from({ length: 9 }, (_, at) => `r${at}`);
    const many = Object.fromEntries(names.map((name) => [name, 'a b c d *good']));
    const lines = [...names, ...names].map((name, at, all) => {
      const bands = ['a', 'b', 'c', 'd'][Math.floor(at / 9) * 2];
      return `N${at}: Read ${name}; ${bands} → N${at + 1}; b, c → N${at + 1}; otherwise → ${at + 1 < all.length ? `N${at + 1}` : 'X'}`;
    });
    const { tree } = linkedTree(
      { readings: { ...readings, ...many }, faults: { x: '' } },
      shortBody(...lines, `N18: Stop`, ...end.slice(0, 1)),
    );
    const faults = tree.facts.faults.map((fault) => ({ ...fault, rest: 'unknown' as const }));
    const { faults: walks, notExact } = analyse({ ...tree, facts: { ...tree.facts, faults } });
    expect(walks[0]?.notFollowed).toBeGreaterThan(0);
    expect(notExact).toContainEqual({ section: 'x', why: expect.stringContaining('were not followed') });
    expect(notExact).toContainEqual({ section: 'n9', why: expect.stringContaining('taken together') });
  });
});

describe('the other findings', () => {
  test('tell a condition that a task sets, but not on the way', () => {
    const facts = { ...base, conditions: { cards: 'in out' } };
    const lines = [
      'A: Read pg; low → B; otherwise → C',
      'B: Do → S',
      'C: Read v5; low → X; otherwise → S',
      ...end,
    ];
    const more = { readings: { v5: { when: { cards: 'out' } } }, sets: { b: { cards: 'out' } } };
    expect(problems(facts, lines, more)).toContainEqual(
      expect.objectContaining({ code: 'condition-not-set', elsewhere: true }),
    );
  });

  const ohms: Partial<Reading> = {
    power: 'off',
    measure: {
      kind: 'quantity',
      unit: 'kΩ',
      scale: {
        written: '',
        bands: ['short', 'good'],
        limits: [{ kind: 'quantity', value: '2', unit: 'Ω' }],
        byMagnitude: false,
        nominal: null,
      },
    },
    normal: ['good'],
  };

  test('tell the first section that powers the board before any resistance was measured', () => {
    const facts = { ...base, readings: { ...readings, r: 'short *good', t: 'a *b' } };
    const more = { readings: { r: ohms, v5: { power: 'on' as const } } };
    const late = [
      'A: Read v5; low → B; otherwise → S',
      'B: Read r pg t; r is short → S; otherwise → X',
      ...end,
    ];
    expect(problems(facts, late, more)).toMatchObject([
      { code: 'power-before-ohms', reading: 'v5', title: 'A' },
    ]);
    const first = [
      'A: Read r pg t; r is short → S; otherwise → B',
      'B: Read v5; low → X; otherwise → S',
      ...end,
    ];
    expect(problems(facts, first, more)).toEqual([]);
    const aside = [
      'A: Read pg; low → B; otherwise → C',
      'B: Read r t; r is short → S; otherwise → C',
      'C: Read v5; low → X; otherwise → S',
      ...end,
    ];
    expect(problems(facts, aside, more)).toMatchObject([{ code: 'power-before-ohms', title: 'C' }]);
    const asked = {
      readings: { r: ohms, v5: { power: 'on' as const, onlyIf: [{ reading: 'r', bands: ['good'] }] } },
    };
    expect(problems(facts, aside, asked)).toEqual([]);
  });

  test('say nothing of power in a tree that measures no resistance', () => {
    const lines = ['A: Read v5 pg; v5 is low → X; otherwise → S', ...end];
    expect(problems(base, lines, { readings: { v5: { power: 'on' } } })).toEqual([]);
  });

  test('tell a check without a way on for who lacks a tool of the list', () => {
    const lines = ['A: Read pg; low → S; otherwise → B', 'B: Read v5; low → X; otherwise → S', ...end];
    const more = {
      readings: { pg: { with: ['meter'] }, v5: { with: ['scope'] } },
      tools: ['meter', 'scope'],
    };
    expect(problems(base, lines, more)).toMatchObject([
      { code: 'no-way-without-tool', tool: 'scope', title: 'B', checks: 1 },
    ]);
    expect(problems(base, lines, { readings: more.readings })).toEqual([]);
    const either = { ...more, readings: { ...more.readings, v5: { with: ['scope', 'probe'] } } };
    expect(problems(base, lines, either)).toEqual([]);
    const told = [
      'A: Read pg; low → S; otherwise → B',
      'B: Read v5; low → X; cannot read → S; otherwise → S',
      ...end,
    ];
    expect(problems(base, told, more)).toEqual([]);
  });
});
