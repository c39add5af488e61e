import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  fittingAllows,
  type Positions,
  parsePositions,
  positionsFor,
  settingAt,
} from '../../../engine/board/index.ts';
import type { CompiledBoard } from '../../../engine/model/compiled-board.ts';
import { settingText } from '../../../engine/scale/index.ts';
import { boardOf, codes, compiled } from './sheet.ts';

const plover = boardOf(`
jumpers:
  JP1: { is: Bus clock, positions: [1-2, 2-3] }
  JP2: { is: Bus clock, positions: [closed, open] }
  SW1-4: { is: Fourth switch, positions: [on, off] }
tables:
  bus:
    JP1 1-2 + JP2 open: 25 MHz
    JP1 1-2 + JP2 closed: 33.3 MHz
    JP1 2-3 + JP2 open: 40 MHz
  fpu:
    SW1-4 on: fitted
    SW1-4 off: none
fitting:
  memory: { is: Memory, sockets: [A, B, C, D], together: [[A, B], [A, B, C, D]] }
`);

const at = (setting: string, typed: string): string => {
  const positions = parsePositions(plover, typed);
  const made = positions.ok ? settingAt(plover, setting, positions.value) : positions;
  return made.ok ? settingText(made.value) : made.refusal.text;
};

describe('parsePositions()', () => {
  test.each([
    ['JP1 1-2, JP2 open', { JP1: '1-2', JP2: 'open' }],
    ['jp1=1-2', { JP1: '1-2' }],
    ['JP1: 2 – 3 and jp2: CLOSED', { JP1: '2-3', JP2: 'closed' }],
    ['JP2 open + JP1 1-2', { JP1: '1-2', JP2: 'open' }],
    ['sw1-4 off', { 'SW1-4': 'off' }],
    ['JP1 1-2; JP1 1-2', { JP1: '1-2' }],
  ])('takes %s', (typed, expected) => {
    expect(parsePositions(plover, typed)).toEqual({ ok: true, value: expected });
  });

  test.each([
    ['', 'No jumper is named'],
    ['JP9 1-2', 'This board has no jumper "JP9"'],
    ['JP1 3-4', 'JP1 has no position "3-4"'],
    ['JP1', 'Nothing says where JP1 sits'],
    ['JP1 1-2, JP1 2-3', 'JP1 cannot be in two positions at once'],
    ['constructor 1-2', 'This board has no jumper "constructor"'],
    ['x'.repeat(500), 'This is 500 characters long, and 400 is the most'],
  ])('refuses %j', (typed, why) => {
    const taken = parsePositions(plover, typed);
    expect(taken.ok ? taken.value : taken.refusal.text).toBe(why);
  });

  test('takes or refuses every text, and takes whatever it offers', () => {
    const words = fc.constantFrom(
      'JP1',
      'jp2',
      'SW1-4',
      '1-2',
      'open',
      'closd',
      '+',
      ',',
      '=',
      'and',
      ' ',
      '–',
    );
    const typed = fc.oneof(
      fc.string(),
      fc.array(words, { maxLength: 9 }).map((parts) => parts.join(' ')),
    );
    fc.assert(
      fc.property(typed, (text) => {
        const taken = parsePositions(plover, text);
        if (taken.ok) return;
        for (const offer of taken.refusal.offers) expect(parsePositions(plover, offer).ok, offer).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});

describe('settingAt()', () => {
  test('gives the value of the row that holds', () => {
    expect(at('bus', 'JP1 1-2, JP2 open')).toBe('25 MHz');
    expect(at('bus', 'JP1 1-2, JP2 open, SW1-4 on')).toBe('25 MHz');
    expect(at('fpu', 'SW1-4 off')).toBe('none');
  });

  test('says which jumper is missing, and what it decides', () => {
    expect(at('bus', 'JP1 1-2')).toBe('Where does JP2 sit? JP1 1-2 makes 25 MHz or 33.3 MHz');
    expect(at('bus', 'SW1-4 on')).toBe(
      'Where do JP1 and JP2 sit? The table makes 25 MHz, 33.3 MHz or 40 MHz',
    );
    expect(at('bus', 'JP1 2-3')).toBe('Where does JP2 sit? JP1 2-3 makes 40 MHz');
  });

  test('says that positions are in no row, and offers the nearest ones', () => {
    const taken = settingAt(plover, 'bus', { JP1: '2-3', JP2: 'closed' });
    expect(taken).toEqual({
      ok: false,
      refusal: {
        text: 'JP1 2-3, JP2 closed is in no row of the jumper table: it sets nothing that anybody knows of',
        offers: ['JP1 1-2, JP2 closed', 'JP1 2-3, JP2 open'],
      },
    });
  });

  test('refuses a setting without a table', () => {
    expect(at('vcc', 'JP1 1-2')).toBe('This board sheet has no jumper table for "vcc"');
  });
});

describe('positionsFor()', () => {
  test('gives every row with the value, and the jumpers that may sit anywhere', () => {
    const board = boardOf(`
jumpers:
  JP1: { is: Bus clock, positions: [1-2, 2-3] }
  JP2: { is: Bus clock, positions: [closed, open] }
tables:
  bus:
    JP1 1-2: 33 MHz
    JP1 2-3 + JP2 open: 33000 kHz
    JP1 2-3 + JP2 closed: 25 MHz
`);
    expect(positionsFor(board, 'bus', { value: '33000000', unit: 'MHz' })).toEqual({
      ok: true,
      value: [
        { at: { JP1: '1-2' }, anywhere: ['JP2'] },
        { at: { JP1: '2-3', JP2: 'open' }, anywhere: [] },
      ],
    });
  });

  test('offers the nearest values first', () => {
    expect(positionsFor(plover, 'bus', { value: '38000000', unit: 'MHz' })).toEqual({
      ok: false,
      refusal: {
        text: 'No position of the jumpers makes "bus" 38 MHz',
        offers: ['40 MHz', '33.3 MHz', '25 MHz'],
      },
    });
  });
});

describe('fittingAllows()', () => {
  const [memory] = plover.fittings;
  const told = (...filled: readonly string[]) => {
    const taken = memory && fittingAllows(memory, filled);
    return taken?.ok ? taken.value.join('+') : taken?.refusal;
  };

  test('takes the groups of the sheet in any order and letter case', () => {
    expect(told('b', 'A')).toBe('A+B');
    expect(told('D', 'C', 'B', 'A')).toBe('A+B+C+D');
  });

  test('says what does not go, and offers the nearest group', () => {
    expect(told('A')).toEqual({ text: 'A may not be filled alone', offers: ['A, B', 'A, B, C, D'] });
    expect(told('A', 'B', 'D')).toMatchObject({ text: 'A, B and D may not be filled together' });
    expect(told()).toMatchObject({ text: 'No socket is filled' });
    expect(told('E')).toMatchObject({ text: 'There is no socket "E": the sheet has A, B, C and D' });
  });
});

/** Up to four jumpers and rows over some of them; a row without jumpers cannot be written. */
const tables = fc.array(fc.integer({ min: 2, max: 3 }), { minLength: 1, maxLength: 4 }).chain((sizes) =>
  fc.record({
    sizes: fc.constant(sizes),
    rows: fc.uniqueArray(
      fc
        .record({
          at: fc.tuple(...sizes.map((size) => fc.integer({ min: -1, max: size - 1 }))),
          value: fc.integer({ min: 1, max: 3 }),
        })
        .filter(({ at: row }) => row.some((position) => position >= 0)),
      { selector: ({ at: row }) => row.join(), minLength: 1, maxLength: 8 },
    ),
  }),
);

type Drawn = typeof tables extends fc.Arbitrary<infer T> ? T : never;

const positionsOf = (at: readonly number[]): Positions =>
  Object.fromEntries(
    at.flatMap((position, jumper) => (position < 0 ? [] : [[`J${jumper}`, `p${position}`]])),
  );

const sheetOf = ({ sizes, rows }: Drawn): string => `
jumpers:
${sizes.map((size, jumper) => `  J${jumper}: { is: x, positions: [${[...Array(size).keys()].map((p) => `p${p}`)}] }`).join('\n')}
tables:
  bus:
${rows
  .map(({ at: row, value }) => {
    const key = Object.entries(positionsOf(row)).map((pair) => pair.join(' '));
    return `    ${key.join(' + ')}: ${value} MHz`;
  })
  .join('\n')}
`;

/** Every way in which all jumpers can sit. */
const everyWay = (sizes: readonly number[]): readonly (readonly number[])[] =>
  sizes.reduce<readonly (readonly number[])[]>(
    (ways, size) => ways.flatMap((way) => [...Array(size).keys()].map((position) => [...way, position])),
    [[]],
  );

const fits = (row: readonly number[], way: readonly number[]): boolean =>
  row.every((position, jumper) => position < 0 || way[jumper] === -1 || position === way[jumper]);

const valuesOf = ({ rows }: Drawn, way: readonly number[]): readonly number[] => [
  ...new Set(rows.filter(({ at: row }) => fits(row, way)).map(({ value }) => value)),
];

describe('jumper tables of random boards, against trying every way in which the jumpers can sit', () => {
  test('contradict themselves exactly where two rows hold at once with different values', () => {
    fc.assert(
      fc.property(tables, (drawn) => {
        const clash = everyWay(drawn.sizes).some((way) => valuesOf(drawn, way).length > 1);
        expect(codes(compiled(sheetOf(drawn)).diagnostics).includes('positions-overlap')).toBe(clash);
      }),
    );
  });

  test('say how many positions no row covers', () => {
    fc.assert(
      fc.property(tables, (drawn) => {
        const deciding = drawn.sizes.map((size, jumper) =>
          drawn.rows.some(({ at: row }) => (row[jumper] ?? -1) >= 0) ? size : 1,
        );
        const open = everyWay(deciding).filter((way) => valuesOf(drawn, way).length === 0);
        const told = compiled(sheetOf(drawn)).diagnostics.find(({ code }) => code === 'positions-uncovered');
        expect(told?.code === 'positions-uncovered' ? told.more + 1 : 0).toBe(open.length);
      }),
    );
  });

  test('lead from positions to a value, and from the value back to those positions', () => {
    fc.assert(
      fc.property(tables, (drawn) => {
        const board = compiled(sheetOf(drawn)).board;
        fc.pre(board !== null);
        for (const way of everyWay(drawn.sizes)) {
          const [value] = valuesOf(drawn, way);
          const made = settingAt(board, 'bus', positionsOf(way));
          expect(made.ok && settingText(made.value)).toBe(value === undefined ? false : `${value} MHz`);
          if (made.ok) expect(waysOf(board, made.value)).toContainEqual(positionsOf(way));
        }
      }),
    );

    /** Every full set of positions that the ways to a value allow. */
    function waysOf(board: CompiledBoard, value: Parameters<typeof positionsFor>[2]): readonly Positions[] {
      const ways = positionsFor(board, 'bus', value);
      if (!ways.ok) return [];
      return everyWay(board.jumpers.map(({ positions }) => positions.length))
        .map(positionsOf)
        .filter((full) =>
          ways.value.some(({ at: row }) => Object.entries(row).every(([jumper, to]) => full[jumper] === to)),
        );
    }
  });

  test('answer for some of the jumpers exactly where the others do not matter', () => {
    const partly = tables.chain((drawn) =>
      fc.record({
        drawn: fc.constant(drawn),
        way: fc.tuple(...drawn.sizes.map((size) => fc.integer({ min: -1, max: size - 1 }))),
      }),
    );
    fc.assert(
      fc.property(partly, ({ drawn, way }) => {
        const board = compiled(sheetOf(drawn)).board;
        fc.pre(board !== null);
        const whole = everyWay(drawn.sizes).filter((full) => fits(way, full));
        const values = new Set(whole.map((full) => valuesOf(drawn, full)[0]));
        const [only] = values;
        const made = settingAt(board, 'bus', positionsOf(way));
        expect(made.ok && settingText(made.value)).toBe(
          values.size === 1 && only !== undefined ? `${only} MHz` : false,
        );
        if (made.ok) return;
        for (const offer of made.refusal.offers) {
          const again = parsePositions(board, offer);
          expect(again.ok && settingAt(board, 'bus', again.value).ok, offer).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });
});
