import { describe, expect, test } from 'vitest';
import { parseFormula } from '../../../engine/formula/index.ts';
import type { Observation } from '../../../engine/model/observation.ts';
import type { Present } from '../../../engine/model/present.ts';
import type { Reading } from '../../../engine/model/reading.ts';
import {
  deriveObservation,
  expectedBecause,
  inputsOf,
  observationText,
  observe,
  possibleBands,
} from '../../../engine/scale/index.ts';
import { expecting, quantitySetting, readingOf, scaled, settingsOf, taken } from './quantity-reading.ts';

const named = (id: string, reading: Reading): Reading => ({ ...reading, id });
const derived = (from: string, reading: Reading): Reading => ({
  ...reading,
  from: taken(parseFormula(from, { comparison: true })),
});
const yesNo = readingOf({ kind: 'options', options: ['yes', 'no'].map((name) => ({ name, means: null })) }, [
  'no',
]);

const clocks = [
  named('cpu_clk', scaled('none < 1 kHz < slow < bus * 99 % < good < bus * 101 % < fast', 'MHz', 'good')),
  named('pci_clk', scaled('none < 1 kHz < slow < 33 MHz < good < 34 MHz < fast', 'MHz', 'good')),
  named('usb_clk', scaled('none < 1 kHz < slow < 47 MHz < good < 49 MHz < fast', 'MHz', 'good')),
];
const at40 = settingsOf({ bus: '40 MHz' });
const plain = scaled('low < 0.95 < good < 1.05 < high', '', 'good');
const factor = derived('factor(cpu_clk / bus, pci_clk / 33.3 MHz, usb_clk / 48 MHz)', plain);
const spread = derived(
  'spread(cpu_clk / bus, pci_clk / 33.3 MHz, usb_clk / 48 MHz)',
  scaled('alike < 2 % < apart', '', 'alike'),
);

/** What was typed for each reading that was taken. */
const taking =
  (typed: Readonly<Record<string, string>>, readings: readonly Reading[] = clocks, present: Present = at40) =>
  (id: string): Observation | null => {
    const reading = readings.find((one) => one.id === id);
    const text = typed[id];
    return reading === undefined || text === undefined ? null : taken(observe(reading, present, text));
  };

const derive = (reading: Reading, typed: Readonly<Record<string, string>>) =>
  deriveObservation(reading, at40, taking(typed));

describe('deriveObservation()', () => {
  const all = { cpu_clk: '25.2', pci_clk: '20.979', usb_clk: '30.24' };

  test('finds the ratio that several clocks have in common, exactly', () => {
    const seen = derive(factor, all);
    expect(seen).toMatchObject({
      reading: 'r',
      typed: '',
      understood: { kind: 'quantity', quantity: { value: '63/100', unit: '' } },
      bands: ['low'],
      remarks: [],
      doubt: null,
    });
    expect(observationText(seen)).toBe('0.63');
    expect(derive(spread, all)).toMatchObject({ understood: { quantity: { value: '0' } }, bands: ['alike'] });
  });

  test('leaves out a clock that is zero, in the band none or was not read, and wants two', () => {
    for (const usb of ['0', 'none', '500 Hz']) {
      expect(derive(factor, { ...all, usb_clk: usb }).understood).toMatchObject({
        quantity: { value: '63/100' },
      });
    }
    const unread = derive(factor, { cpu_clk: '25.2', pci_clk: '20.979' });
    expect(unread).toMatchObject({ bands: ['low'], remarks: ['"usb_clk" is not known'] });
    const one = derive(factor, { cpu_clk: '25.2', pci_clk: '0', usb_clk: 'none' });
    expect(one.bands).toEqual(['low', 'good', 'high']);
    expect(observationText(one)).toBe('not known');
  });

  test('keeps every band open that an untidy input leaves possible', () => {
    expect(derive(factor, { ...all, cpu_clk: '25..45' })).toMatchObject({ bands: ['low'] });
    expect(derive(factor, { ...all, cpu_clk: '37..45', pci_clk: '32..34' })).toMatchObject({
      understood: { kind: 'interval', closed: true },
      bands: ['low', 'good'],
    });
  });

  test('answers a comparison with yes or no, and with both where it is open', () => {
    const overdriven = derived('cpu_clk > bus * 1.2', yesNo);
    const answer = (typed: string) => derive(overdriven, { cpu_clk: typed }).bands;
    expect(answer('48 MHz')).toEqual(['no']);
    expect(answer('48.001 MHz')).toEqual(['yes']);
    expect(answer('47..49')).toEqual(['yes', 'no']);
    expect(answer('> 48')).toEqual(['yes']);
    expect(derive(overdriven, {}).bands).toEqual(['yes', 'no']);
    expect(observationText(derive(overdriven, { cpu_clk: '50' }))).toBe('yes');
    expect(derive(derived('cpu_clk >= bus * 1.2', yesNo), { cpu_clk: '48' }).bands).toEqual(['yes']);
  });

  test('is known from settings alone, and not without them', () => {
    const turbo = derived('bus > 33 MHz', yesNo);
    expect(deriveObservation(turbo, at40, () => null).bands).toEqual(['yes']);
    expect(deriveObservation(turbo, settingsOf({ bus: null }), () => null)).toMatchObject({
      bands: ['yes', 'no'],
      remarks: ['"bus" is not known'],
    });
  });

  test('gives any band where it divides by zero', () => {
    const ratio = derived('cpu_clk / pci_clk', plain);
    expect(derive(ratio, { cpu_clk: '25', pci_clk: '0' }).bands).toEqual(['low', 'good', 'high']);
  });

  test('rests on another derived reading', () => {
    const half = named('half', derived('cpu_clk / 2', expecting('20 MHz ± 5 %', 'MHz')));
    const whole = derived('half * 2 / bus', plain);
    const latest = (id: string) =>
      id === 'half' ? deriveObservation(half, at40, taking({ cpu_clk: '40' })) : null;
    expect(deriveObservation(whole, at40, latest)).toMatchObject({ bands: ['good'] });
    expect(deriveObservation(half, at40, taking({ cpu_clk: '40' })).understood).toEqual({
      kind: 'quantity',
      quantity: { value: '20000000', unit: 'MHz' },
    });
  });

  test('takes an overload of an ohmmeter for all above the last limit', () => {
    const r = (id: string) => named(id, scaled('short < 10 Ω < good < 1 MΩ < open', 'Ω', 'good'));
    const apart = derived('ra / rb', scaled('less < 1 < more', '', 'less'));
    expect(deriveObservation(apart, at40, taking({ ra: 'OL', rb: '100' }, [r('ra'), r('rb')])).bands).toEqual(
      ['more'],
    );
    expect(deriveObservation(apart, at40, taking({ ra: '100', rb: 'OL' }, [r('ra'), r('rb')])).bands).toEqual(
      ['less'],
    );
  });

  test('names its inputs, and only settings as reasons', () => {
    expect(inputsOf(factor)).toEqual(['cpu_clk', 'bus', 'pci_clk', 'usb_clk']);
    const declared = new Map([['bus', quantitySetting('bus', 'MHz', null)]]);
    expect(expectedBecause(factor, at40, declared)).toEqual([
      { setting: 'bus', is: 'What bus is', value: '40 MHz' },
    ]);
  });

  test('is never typed', () => {
    const seen = observe(factor, at40, '0.63');
    expect(seen.ok ? null : seen.refusal.text).toBe(
      '"r" follows from other readings, so there is nothing to type for it',
    );
  });
});

describe('possibleBands()', () => {
  const of = (reading: Reading, bands: Readonly<Record<string, readonly string[]>>) =>
    possibleBands(
      reading,
      clocks.flatMap((input) => {
        const found = bands[input.id];
        return found === undefined ? [] : [{ reading: input, bands: found }];
      }),
      at40,
    );

  test('allows only what the bands of the inputs allow', () => {
    const good = { cpu_clk: ['good'], pci_clk: ['good'], usb_clk: ['good'] };
    expect(of(factor, good)).toEqual(['good']);
    expect(of(factor, { ...good, usb_clk: ['slow'] })).toEqual(['good']);
    expect(of(factor, { ...good, usb_clk: ['none'] })).toEqual(['good']);
    expect(of(factor, { cpu_clk: ['slow'], pci_clk: ['slow'], usb_clk: ['slow'] })).toEqual(['low', 'good']);
    expect(of(factor, { cpu_clk: ['none'], pci_clk: ['none'], usb_clk: ['good'] })).toEqual([
      'low',
      'good',
      'high',
    ]);
  });

  test('looks at each combination of bands by itself', () => {
    const ratio = derived('cpu_clk / bus', plain);
    expect(of(ratio, { cpu_clk: ['none', 'fast'] })).toEqual(['low', 'good', 'high']);
    const wide = derived('cpu_clk / bus', scaled('a < 0.5 < b < 1.005 < c < 1.01 < d', '', 'b'));
    expect(of(wide, { cpu_clk: ['none', 'fast'] })).toEqual(['a', 'd']);
  });

  test('minds which band a limit belongs to', () => {
    const above = derived('cpu_clk > bus * 1.01', yesNo);
    expect(of(above, { cpu_clk: ['good'] })).toEqual(['no']);
    expect(of(above, { cpu_clk: ['fast'] })).toEqual(['yes']);
    const from = derived('cpu_clk >= bus * 1.01', yesNo);
    expect(of(from, { cpu_clk: ['good'] })).toEqual(['yes', 'no']);
  });

  test('leaves every band open where an input shows nothing, or a setting is not known', () => {
    const ratio = derived('cpu_clk / pci_clk', plain);
    expect(of(ratio, { cpu_clk: ['good'] })).toEqual(['low', 'good', 'high']);
    expect(possibleBands(derived('bus / 40 MHz', plain), [], settingsOf({}))).toEqual([
      'low',
      'good',
      'high',
    ]);
    expect(possibleBands(derived('bus / 40 MHz', plain), [], at40)).toEqual(['good']);
  });
});
