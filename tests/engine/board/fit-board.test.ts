import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitBoard, pointsOf } from '../../../engine/board/index.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import type { Measure, Reading } from '../../../engine/model/reading.ts';
import type { Setting } from '../../../engine/model/setting.ts';
import { bandsOf, eachBands, parseCodes, parseExpect, parseScale } from '../../../engine/scale/index.ts';
import { plainReading } from '../../helpers/plain-reading.ts';
import { quantitySetting, taken } from '../scale/quantity-reading.ts';
import { boardOf } from './sheet.ts';

const inVolts = (scale: string): Measure => ({
  kind: 'quantity',
  unit: 'V',
  scale: taken(parseScale(scale, 'V')),
});
const fivePercent: Measure = { kind: 'quantity', unit: 'V', scale: taken(parseExpect('5 V ± 5 %', 'V')) };

const codesOf = (table: Readonly<Record<string, string>>): Measure =>
  parseCodes(Object.entries(table).map(([key, band]) => ({ key, band, means: null }))).measure;

/** As much of a tree as fitting looks at. */
const treeOf = (readings: readonly Reading[], settings: readonly Setting[] = []): CompiledTree =>
  ({ id: 't', title: 'T', digest: 'd'.repeat(64), readings, settings }) as unknown as CompiledTree;

const cpu: Setting = {
  kind: 'options',
  id: 'cpu',
  is: 'CPU',
  options: ['dx', 'sx'].map((name) => ({ name, means: null })),
  usual: 'dx',
};

/** The written scale of each reading after fitting, and what is told. */
function fitted(readings: readonly Reading[], facts: string, settings: readonly Setting[] = []) {
  const { tree, misfits } = fitBoard(treeOf(readings, settings), boardOf(facts));
  const scales = tree.readings.map(({ measure }) =>
    measure.kind === 'quantity'
      ? measure.scale.written
      : measure.kind === 'each' && measure.of.kind === 'quantity'
        ? measure.of.scale.written
        : measure.kind,
  );
  return { scales, misfits, tree };
}

describe('fitBoard()', () => {
  test('puts the limits of the sheet in the place of the tree, with their source', () => {
    const v5 = { ...plainReading('v5', fivePercent, ['good']), source: 'tree' };
    const { scales, misfits, tree } = fitted([v5], 'readings: { v5: { expect: 5 V ± 3 %, source: legend } }');
    expect({ scales, misfits }).toEqual({ scales: ['5 V ± 3 %'], misfits: [] });
    expect(tree.readings[0]).toMatchObject({ source: 'legend', normal: ['good'] });
  });

  test('leaves aside what the tree does not have', () => {
    const { scales, misfits } = fitted(
      [plainReading('v5', fivePercent, ['good'])],
      'settings: { bus: 33 MHz }\nreadings: { v12: { expect: 12 V ± 3 %, source: x } }',
    );
    expect({ scales, misfits }).toEqual({ scales: ['5 V ± 5 %'], misfits: [] });
  });

  test('tells what does not fit, and keeps the limits of the tree', () => {
    const readings = [
      plainReading('v5', inVolts('dead < 1 V < low < 4.75 V < good'), ['good']),
      plainReading('clk', inVolts('low < 1 V < good'), ['good']),
      plainReading('fan', { kind: 'options', options: [] }, 'any'),
      plainReading('post', fivePercent, ['good']),
      plainReading('vio', fivePercent, ['good']),
    ];
    const { scales, misfits } = fitted(
      readings,
      `
settings: { vref: 3 V }
readings:
  v5: { expect: 5 V ± 3 %, source: x }
  clk: { scale: low < 33 MHz < good, source: x }
  fan: { expect: 5 V ± 3 %, source: x }
  post: { codes: { 00: low }, source: x }
  vio: { expect: vref ± 3 %, source: x }`,
    );
    expect(scales).toEqual([
      'dead < 1 V < low < 4.75 V < good',
      'low < 1 V < good',
      'options',
      '5 V ± 5 %',
      '5 V ± 5 %',
    ]);
    expect(misfits).toEqual([
      'The sheet\'s limits of "v5" are not used: its bands are others on the sheet',
      'The sheet\'s limits of "clk" are not used: it is in V here and in MHz on the sheet',
      'The sheet\'s limits of "fan" are not used: it has no limits that a board could move',
      'The sheet\'s limits of "post" are not used: it is a quantity here and not on the sheet',
      'The sheet\'s limits of "vio" are not used: "vref ± 3 %" speaks of settings that this tree does not have',
    ]);
  });

  test('gives settings their usual value on this board', () => {
    const settings = [quantitySetting('bus', 'MHz', '33 MHz'), cpu, quantitySetting('vcc', 'V', null)];
    const { tree, misfits } = fitted([], 'settings: { bus: 40 MHz, cpu: sx, vcc: 3 MHz }', settings);
    expect(tree.settings.map(({ usual }) => usual)).toEqual([{ value: '40000000', unit: 'MHz' }, 'sx', null]);
    expect(misfits).toEqual([
      'The sheet\'s usual value of "vcc", 3 MHz, is no value that this tree knows of it',
    ]);
  });

  test('tells a jumper table with values that the tree does not know', () => {
    const table = `
jumpers: { JP1: { is: x, positions: [a, b] } }
tables: { cpu: { JP1 a: dx, JP1 b: tx } }`;
    expect(fitted([], table, [cpu]).misfits).toEqual([
      'The jumper table of "cpu" gives tx, which is no value that this tree knows of it',
    ]);
  });

  test('moves the limits of readings that are like one of the sheet, unless they were cut otherwise', () => {
    const readings = [
      plainReading('v5', fivePercent, ['good']),
      { ...plainReading('v5_bare', fivePercent, ['good']), like: 'v5' },
      { ...plainReading('v5_cold', fivePercent, ['good']), like: 'v5_bare' },
      { ...plainReading('v5_wide', inVolts('low < 4 V < good < 6 V < high'), ['good']), like: 'v5' },
      plainReading('v5_other', fivePercent, ['good']),
    ];
    expect(fitted(readings, 'readings: { v5: { expect: 5 V ± 3 %, source: x } }').scales).toEqual([
      '5 V ± 3 %',
      '5 V ± 3 %',
      '5 V ± 3 %',
      'low < 4 V < good < 6 V < high',
      '5 V ± 5 %',
    ]);
  });

  test('moves the limits of each of many alike', () => {
    const rails: Measure = {
      kind: 'each',
      members: ['A', 'B', 'C'],
      of: fivePercent as Extract<Measure, { kind: 'quantity' }>,
      normal: ['good'],
      bands: eachBands(3, ['low', 'good', 'high'], ['good']),
    };
    const { scales } = fitted(
      [plainReading('rails', rails, ['all-normal'])],
      'readings: { rails: { expect: 5 V ± 3 %, source: x } }',
    );
    expect(scales).toEqual(['5 V ± 3 %']);
  });

  test('keeps every band of a code table, so that outcomes mean the same on every board', () => {
    const post = plainReading('post', codesOf({ '00': 'none', '01..1F': 'early', '20..7F': 'late' }), [
      'late',
    ]);
    const { tree } = fitted([post], 'readings: { post: { codes: { 00: none, 01..FF: late }, source: x } }');
    expect(tree.readings.map(bandsOf)).toEqual([['none', 'early', 'late', 'other']]);
    expect(fitted([post], 'readings: { post: { codes: { 00: dark }, source: x } }').misfits).toHaveLength(1);
  });
});

const names = ['low', 'good', 'high', 'dead'];
const drawnBands = fc.uniqueArray(fc.constantFrom(...names), { minLength: 2, maxLength: 4 });
const scaleText = (bands: readonly string[], from: number): string =>
  bands.map((band, index) => (index === 0 ? band : `${from + index} V < ${band}`)).join(' < ');

/** Readings of a tree and of a sheet, under the same few names. */
const drawn = fc.record({
  tree: fc.array(
    fc.record({ bands: drawnBands, like: fc.option(fc.nat(4)), unit: fc.constantFrom('V', 'V', 'mV') }),
    { minLength: 1, maxLength: 5 },
  ),
  sheet: fc.array(fc.record({ bands: drawnBands, unit: fc.constantFrom('V', 'V', 'MHz') }), { maxLength: 5 }),
});

describe('fitBoard() of random trees and sheets', () => {
  test('never changes bands, their order, normal bands, ids or digest', () => {
    fc.assert(
      fc.property(drawn, ({ tree: own, sheet }) => {
        const readings = own.map(({ bands, like, unit }, index) => ({
          ...plainReading(
            `r${index}`,
            { kind: 'quantity', unit, scale: taken(parseScale(scaleText(bands, 0), unit)) },
            bands.slice(0, 1),
          ),
          like: like === null ? null : `r${like}`,
        }));
        const limits = sheet.map(
          ({ bands, unit }, index) =>
            `  r${index}: { scale: ${scaleText(bands, 10).replaceAll(' V', ` ${unit}`)}, source: x }`,
        );
        const before = treeOf(readings);
        const board = boardOf(limits.length === 0 ? '' : `readings:\n${limits.join('\n')}`);
        const { tree, misfits } = fitBoard(before, board);
        const meaning = (each: CompiledTree) =>
          each.readings.map((reading) => [reading.id, bandsOf(reading), reading.normal, reading.like]);
        expect(meaning(tree)).toEqual(meaning(before));
        expect(tree.digest).toBe(before.digest);
        const moved = tree.readings.filter(({ measure }, index) => measure !== readings[index]?.measure);
        const direct = board.readings.filter(({ reading }) => moved.some(({ id }) => id === reading));
        const named = board.readings.filter(({ reading }) => readings.some(({ id }) => id === reading));
        expect(direct.length + misfits.length).toBe(named.length);
      }),
      { numRuns: 200 },
    );
  });
});

describe('pointsOf()', () => {
  const { points } = boardOf('points: { v5: { is: contact 10 }, v5_cold: [{ is: red }, { is: black }] }');
  const pointed = (id: string, like: string | null) => pointsOf({ points }, { id, like }).map(({ is }) => is);

  test('gives those of the reading, else those of the one it is like', () => {
    expect(pointed('v5', null)).toEqual(['contact 10']);
    expect(pointed('v5_bare', 'v5')).toEqual(['contact 10']);
    expect(pointed('v5_cold', 'v5')).toEqual(['red', 'black']);
    expect(pointed('v12', null)).toEqual([]);
    expect(pointed('constructor', null)).toEqual([]);
  });
});
