import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkFile } from '../../../engine/check-file.ts';
import { folderLibrary } from '../../helpers/folder-library.ts';

const folder = 'tests/fixtures/compile/short-on-a-rail';
const path = 'trees/dead-rail.md';
const text = readFileSync(`${folder}/${path}`, 'utf8');
const ownShows = "'r_gnd of v5, least * 2': short, 'r_gnd_bare of v5, least * 2': short, halves of v5: left";

const checked = (changed: string) => checkFile(changed, { path, library: folderLibrary(folder) });
const walkOf = (changed: string, fault: string) =>
  checked(changed).analysis?.faults.find((walk) => walk.fault === fault);

describe('the walks of faults through a procedure', () => {
  test("arrive where the fault says what the procedure's own readings show", () => {
    expect(text).toContain(ownShows);
    expect(walkOf(text, 'shorted_chip')).toEqual({
      fault: 'shorted_chip',
      arrives: 1,
      notFollowed: 0,
      astray: [],
    });
  });

  test('arrive where the fault says how the call ends', () => {
    expect(walkOf(text.replace(ownShows, 'find-the-short: found'), 'shorted_chip')?.arrives).toBe(1);
    expect(walkOf(text.replace(ownShows, 'find-the-short: not-found'), 'shorted_chip')).toMatchObject({
      arrives: 0,
      astray: [
        {
          how: 'other-fault',
          path: ['rails', 'find-the-short', 'the-supply'],
          parted: 'find-the-short',
          by: [{ name: 'find-the-short', band: 'not-found' }],
        },
      ],
    });
  });

  test('are misled inside the procedure where the fault says nothing of it', () => {
    const silent = text.replace(`, ${ownShows}`, '');
    expect(silent).not.toBe(text);
    const { diagnostics } = checked(silent);
    const misled = diagnostics.find(({ code }) => code === 'fault-misled');
    expect(misled).toMatchObject({
      fault: 'shorted_chip',
      end: { how: 'other-fault', at: 'The supply' },
      path: ['Rails', 'Find the short', 'Resistance', 'The supply'],
    });
    expect(silent.slice(misled?.span.from, misled?.span.to)).toBe('shorted_chip');
  });

  test('say nothing of outcomes in the procedure that this tree never takes', () => {
    const { analysis } = checked(text);
    expect(analysis?.notExact).toEqual([]);
    expect(analysis?.diagnostics).toEqual([]);
  });
});
