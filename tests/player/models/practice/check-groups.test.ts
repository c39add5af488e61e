import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../../engine/model/reading.ts';
import { boardPlaces, nearestPlace } from '../../../../player/models/practice/board-places.ts';
import { checkGroups } from '../../../../player/models/practice/check-groups.ts';
import { plainReading } from '../../../helpers/plain-reading.ts';
import { benchSheet } from '../../helpers/bench-sheet.ts';

const check = (id: string, more: Partial<Reading> = {}, taken: readonly string[] = []) => ({
  reading: { ...plainReading(id, { kind: 'options', options: [] }, 'any'), ...more },
  taken,
});

describe('checkGroups()', () => {
  const checks = [
    check('v5', { is: '5 V at the slot', power: 'on', with: ['meter'] }),
    check('ohms', { is: '5 V to ground', power: 'off' }),
    check('bare', { is: '5 V, bare', power: 'on', when: { cards: 'out', cpu: 'in' } }),
    check('smell', { is: 'What it smells of', power: null }),
  ];
  const titles = (typed: string) =>
    checkGroups(checks, benchSheet(), typed).map((group) => [
      group.title,
      group.checks.map(({ reading }) => reading.id),
    ]);

  test('puts what needs no power first, and the board as it came before cards are pulled', () => {
    expect(titles('')).toEqual([
      ['Power off', ['ohms']],
      ['Power as it is', ['smell']],
      ['Power on', ['v5']],
      ['Power on, cards out, CPU in', ['bare']],
    ]);
  });

  test('finds by name, by tool, and by the point on the board', () => {
    expect(titles('ground')).toEqual([
      ['Power off', ['ohms']],
      ['Power on', ['v5']],
    ]);
    expect(titles('meter')).toEqual([['Power on', ['v5']]]);
    expect(titles('contact b3')).toEqual([['Power on', ['v5']]]);
    expect(titles('scope')).toEqual([]);
  });
});

describe('boardPlaces()', () => {
  const checks = [check('v5', {}, ['5 V']), check('pg'), check('cpu_clk')];

  test('knows what is measured where, on each picture', () => {
    const places = boardPlaces(benchSheet(), checks);
    expect(places.map(({ picture, places: here }) => [picture.id, here.map((one) => one.readings)])).toEqual([
      ['top', [['v5'], ['pg'], ['cpu_clk']]],
      ['bottom', [['cpu_clk']]],
    ]);
    expect(places[0]?.places.map(({ done }) => done)).toEqual([true, false, false]);
  });

  test('takes the nearest point to a press, and none where the press is far from all', () => {
    const [{ places } = { places: [] }] = boardPlaces(benchSheet(), checks);
    expect(nearestPlace(places, 0.21, 0.1, 1, 0.1)?.readings).toEqual(['v5']);
    expect(nearestPlace(places, 0.5, 0.5, 1, 0.1)).toBeNull();
  });
});
