import { describe, expect, test } from 'vitest';
import { parseUnit, storedUnit, unitTable } from '../../../engine/quantity/index.ts';

const canonical = (text: string): string | null => {
  const unit = parseUnit(text);
  return unit.ok ? unit.value.text : null;
};

const near = (text: string): string | null => {
  const unit = parseUnit(text);
  const problem = unit.ok ? undefined : unit.problems[0];
  return problem?.code === 'unknown-unit' ? problem.near : null;
};

describe('parseUnit()', () => {
  test.each([
    ['MHz', 'MHz'],
    ['megahertz', 'MHz'],
    ['KHz', 'kHz'],
    ['kohm', 'kΩ'],
    ['k\u2126', 'k\u03a9'],
    ['Ohm', 'Ω'],
    ['uF', '\u00b5F'],
    ['\u03bcF', '\u00b5F'],
    ['mVpp', 'mVpp'],
    ['mV p-p', 'mVpp'],
    ['Vp-p', 'Vpp'],
    ['VDC', 'V dc'],
    ['V dc', 'V dc'],
    ['Vac', 'V ac'],
    ['V rms', 'Vrms'],
    ['V peak', 'Vpk'],
    ['C', '°C'],
    ['\u2103', '°C'],
    ['percent', '%'],
    ['ppm', 'ppm'],
    ['count', 'counts'],
    ['', ''],
  ])('reads "%s" as the stored unit "%s"', (text, stored) => {
    expect(canonical(text)).toBe(stored);
  });

  test.each([
    ['mhz', 'MHz'],
    ['v', 'V'],
    ['KOHM', 'kΩ'],
    ['mohm', 'mΩ'],
    ['megaherz', 'MHz'],
    ['volst', 'V'],
  ])('does not take "%s" in a file but offers "%s"', (text, offer) => {
    expect(canonical(text)).toBe(null);
    expect(near(text)).toBe(offer);
  });

  test('has nothing to offer for a text that is like no unit', () => {
    expect(near('fsb')).toBe(null);
    expect(near('q')).toBe(null);
    expect(near('z'.repeat(1_000_000))).toBe(null);
  });

  test('keeps every canonical text as it is, for all units, prefixes and qualifiers', () => {
    const qualifiers = ['', ' dc', ' ac', 'pp', 'rms', 'pk'];
    const texts = unitTable.flatMap(({ symbol, prefixes, qualified }) =>
      ['', ...prefixes].flatMap((prefix) =>
        (qualified ? qualifiers : ['']).map((qualifier) => prefix + symbol + qualifier),
      ),
    );
    expect(texts.length).toBeGreaterThan(60);
    for (const text of texts) {
      expect(canonical(text)).toBe(text);
      expect(storedUnit(text)).toBe(storedUnit(text));
    }
  });

  test('knows no prefix that is not met on a board', () => {
    for (const text of ['kA', 'MV', 'mHz', 'ks', 'MF', 'µΩ', 'k°C', 'm%']) expect(canonical(text)).toBe(null);
  });
});

describe('storedUnit()', () => {
  test('takes a text that is no unit for a plain number of it', () => {
    expect(storedUnit('furlong')).toMatchObject({ text: 'furlong', prefix: '', qualifier: '' });
  });
});
