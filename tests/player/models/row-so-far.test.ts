import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Measure, Reading } from '../../../engine/model/reading.ts';
import { observe } from '../../../engine/scale/index.ts';
import { rowSoFar, rowText } from '../../../player/models/row-so-far.ts';
import { walk } from '../../helpers/bench.ts';
import { lookWhole } from '../../helpers/look-whole.ts';

type Each = Extract<Measure, { readonly kind: 'each' }>;
const session = walk(lookWhole());
const lines = session.loaded.readings.get('lines') as Reading;
const measure = lines.measure as Each;
const options = measure.of.kind === 'options' ? measure.of.options.map(({ name }) => name) : [];

describe('rowSoFar()', () => {
  test('shows who was told while the row is not complete', () => {
    const row = rowSoFar(session, lines, measure, 'A3 stuck');
    expect(row.filter(({ normal }) => !normal)).toEqual([{ name: 'A3', text: 'stuck', normal: false }]);
  });

  test.each(['', 'A99 stuck', 'A3 purple'])('shows nothing of anybody for "%s"', (typed) => {
    expect(rowSoFar(session, lines, measure, typed).every(({ text }) => text === null)).toBe(true);
  });
});

describe('rowText()', () => {
  test('reads back as the same row, whoever shows what', () => {
    const anyRow = fc.tuple(...measure.members.map(() => fc.constantFrom(...options)));
    fc.assert(
      fc.property(anyRow, (values) => {
        const row = new Map(measure.members.map((name, at) => [name, values[at] ?? '']));
        const seen = observe(lines, session, rowText(measure, row));
        const members = seen.ok && seen.value.understood.kind === 'each' ? seen.value.understood.members : [];
        expect(members.map(({ bands: [band] }) => band)).toEqual(values);
      }),
      { numRuns: 60 },
    );
  });
});
