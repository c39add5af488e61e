import { describe, expect, test } from 'vitest';
import {
  checkFormula,
  type Dimension,
  dimensionOf,
  fits,
  parseFormula,
} from '../../../engine/formula/index.ts';

const dimensions = new Map<string, Dimension | null>([
  ['fsb', dimensionOf('MHz')],
  ['vcc', dimensionOf('V')],
  ['swing', dimensionOf('Vpp')],
  ['tolerance', dimensionOf('%')],
  ['cpu', null],
]);

/** The unit a formula comes out in, or its problems. */
function unit(text: string): string {
  const parsed = parseFormula(text);
  if (!parsed.ok) return 'not a formula';
  const checked = checkFormula(parsed.value, dimensions);
  if (checked.ok) return checked.value.text;
  return checked.problems
    .map(({ code, from, to, related }) => {
      const other = related === undefined ? '' : ` and "${text.slice(related.from, related.to)}"`;
      return `${code} at "${text.slice(from, to)}"${other}`;
    })
    .join(', ');
}

describe('checkFormula()', () => {
  test.each([
    ['fsb * 2', 'MHz'],
    ['2 * fsb', 'MHz'],
    ['fsb / 2', 'MHz'],
    ['fsb * (100 % - tolerance)', 'MHz'],
    ['fsb / 48 MHz', ''],
    ['ratio(fsb, 48 MHz)', ''],
    ['5 V / 2 A', 'Ω'],
    ['5 V * 2 A', 'W'],
    ['1 / 30 ns', 'Hz'],
    ['1 / fsb', 's'],
    ['470 Ω * 10 nF', 's'],
    ['10 V * 1 s / 2 A', 'H'],
    ['5 V * 5 V', 'V^2'],
    ['swing * 60 %', 'Vpp'],
    ['vcc * 60 % + 0.5 Vpp', 'Vpp'],
    ['vcc + 1 V dc', 'V dc'],
    ['min(vcc, 3 V, 900 mV)', 'V'],
    ['abs(-vcc)', 'V'],
    ['20 °C + 10 °C', '°C'],
    ['factor(fsb / 33 MHz, vcc / 5 V, tolerance)', ''],
    ['spread(ratio(fsb, 33 MHz), 0.5)', ''],
  ])('finds that "%s" is in "%s"', (text, found) => {
    expect(unit(text)).toBe(found);
  });

  test.each([
    ['vcc + fsb', 'unlike-units at "vcc" and "fsb"'],
    ['2 * (5 V - 48 MHz)', 'unlike-units at "5 V" and "48 MHz"'],
    ['vcc + 1', 'unlike-units at "vcc" and "1"'],
    ['vcc + 5 %', 'unlike-units at "vcc" and "5 %"'],
    ['1 Vpp + 1 Vrms', 'unlike-units at "1 Vpp" and "1 Vrms"'],
    ['max(vcc, fsb)', 'unlike-units at "vcc" and "fsb"'],
    ['ratio(vcc, fsb)', 'unlike-units at "vcc" and "fsb"'],
    ['max(vcc, 1 Vpp, fsb)', 'unlike-units at "1 Vpp" and "fsb"'],
    ['factor(fsb / 33 MHz, fsb)', 'wrong-unit at "fsb"'],
    ['spread(vcc / 5 V, 2 * vcc)', 'wrong-unit at "2 * vcc"'],
    ['vcc > fsb', 'not a formula'],
    ['vc * 2', 'unknown-name at "vc"'],
    ['cpu * 2', 'not-a-number at "cpu"'],
    ['x + y', 'unknown-name at "x", unknown-name at "y"'],
  ])('refuses "%s"', (text, found) => {
    expect(unit(text)).toBe(found);
  });

  test('tells both units of an impossible sum, and near misses of a name', () => {
    const sum = parseFormula('vcc + 48 MHz');
    const name = parseFormula('fbs');
    if (!sum.ok || !name.ok) throw new Error('Expected two formulas');
    expect(checkFormula(sum.value, dimensions)).toMatchObject({ problems: [{ left: 'V', right: 'MHz' }] });
    expect(checkFormula(name.value, new Map([['fsa', dimensionOf('Hz')]]))).toMatchObject({
      problems: [{ near: [] }],
    });
    expect(checkFormula(name.value, new Map([['fbs_', dimensionOf('Hz')]]))).toMatchObject({
      problems: [{ near: ['fbs_'] }],
    });
  });

  test('checks a formula that was loaded and has no places', () => {
    const loaded = JSON.parse(
      '{"kind":"binary","operator":"+","left":{"kind":"name","name":"vcc"},"right":{"kind":"name","name":"fsb"}}',
    );
    expect(checkFormula(loaded, dimensions)).toMatchObject({
      ok: false,
      problems: [{ code: 'unlike-units', from: 0, to: 0 }],
    });
  });
});

describe('fits()', () => {
  test.each([
    ['V', 'mV', true],
    ['V', 'V dc', true],
    ['V dc', 'V', true],
    ['Vpp', 'V', true],
    ['Vpp', 'mVpp', true],
    ['%', 'ppm', true],
    ['°C', '°F', true],
    ['V', 'Vpp', false],
    ['V', 'V ac', false],
    ['V dc', 'Vrms', false],
    ['Vrms', 'Vpp', false],
    ['V', 'A', false],
    ['MHz', 's', false],
  ])('says whether a reading in %s can have a limit in %s: %s', (wanted, found, answer) => {
    expect(fits(dimensionOf(wanted), dimensionOf(found))).toBe(answer);
  });
});
