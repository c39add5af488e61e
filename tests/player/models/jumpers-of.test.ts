import { describe, expect, test } from 'vitest';
import type { Setting } from '../../../engine/model/setting.ts';
import { jumpersOf, moved, wayText } from '../../../player/models/jumpers-of.ts';
import { benchTree, walkWith } from '../../helpers/bench.ts';
import { benchSheet } from '../helpers/bench-sheet.ts';

const session = walkWith(benchTree(), { board: benchSheet(), laterTrees: [] }, 'open: Board 7; ; ');
const bus = session.loaded.settings.get('bus') as Setting;
const cpu = session.loaded.settings.get('cpu') as Setting;

function jumpers(typed: string) {
  const found = jumpersOf(session, bus, typed, 'noted');
  if (found === null) throw new Error('expected a table for the bus');
  return found;
}

describe('jumpersOf()', () => {
  test('shows the jumpers that decide, and no others', () => {
    expect(jumpers('').jumpers.map(({ id }) => id)).toEqual(['JP1', 'JP2']);
    expect(jumpers('')).toMatchObject({ at: {}, ways: [], makes: null });
  });

  test('says what typed positions make', () => {
    expect(jumpers('jp1 1-2, JP2=2-3')).toMatchObject({
      at: { JP1: '1-2', JP2: '2-3' },
      ways: [],
      makes: '40 MHz',
    });
  });

  test('keeps positions that decide nothing yet', () => {
    expect(jumpers('JP1 1-2')).toMatchObject({ at: { JP1: '1-2' }, makes: null });
  });

  test('says which positions make a typed value, and which jumper may sit anywhere', () => {
    const found = jumpers('50');
    expect(found.makes).toBe('50 MHz');
    expect(found.ways.map((way) => wayText(found, way))).toEqual(['JP1 2-3; JP2 anywhere']);
    expect(jumpers('33,0').ways).toHaveLength(1);
  });

  test('knows a value that no position makes', () => {
    expect(jumpers('41')).toMatchObject({ makes: '41 MHz', ways: [], at: {} });
  });

  test('is not there for a setting without a table, and without a sheet', () => {
    expect(jumpersOf(session, cpu, '', 'noted')).toBe(null);
    const bare = walkWith(benchTree(), { board: null, laterTrees: [] }, 'open: Board 7; ; ');
    expect(jumpersOf(bare, bus, '', 'noted')).toBe(null);
  });
});

describe('moved()', () => {
  test('writes the field jumper by jumper, and takes a position out that is pressed again', () => {
    expect(moved(jumpers(''), 'JP2', '2-3')).toBe('JP2 2-3');
    expect(moved(jumpers('JP2 2-3'), 'JP1', '1-2')).toBe('JP1 1-2, JP2 2-3');
    expect(moved(jumpers('JP1 1-2, JP2 2-3'), 'JP2', '1-2')).toBe('JP1 1-2, JP2 1-2');
    expect(moved(jumpers('JP1 1-2, JP2 2-3'), 'JP1', '1-2')).toBe('JP2 2-3');
  });

  test('begins anew over a value', () => {
    expect(moved(jumpers('50'), 'JP1', '2-3')).toBe('JP1 2-3');
  });
});
