import { describe, expect, test } from 'vitest';
import { printQuantity, readTyped } from '../../../engine/quantity/index.ts';

/** How a typed text is understood by a reading in `unit`, on one line. */
function read(typed: string, unit: string, allowNone = false): string {
  const taken = readTyped(typed, { unit, allowNone });
  if (!taken.ok) return `refused: ${taken.refusal.offers.join(' | ')}`;
  const { understood, mark, none, remarks } = taken.value;
  const value =
    understood.kind === 'quantity'
      ? `${printQuantity(understood.quantity)} = ${understood.quantity.value}`
      : understood.kind === 'interval'
        ? `${understood.from} ${understood.closed ? 'to' : 'beyond'} ${understood.to} ${understood.unit}`
        : understood.kind;
  return [
    value,
    ...(none ? ['none'] : []),
    ...(mark === null ? [] : [mark]),
    ...remarks.map((remark) => `(${remark})`),
  ].join(' ');
}

const refusal = (typed: string, unit: string) => {
  const taken = readTyped(typed, { unit, allowNone: false });
  return taken.ok ? '' : taken.refusal.text;
};

describe('readTyped()', () => {
  test.each([
    ['25.2 MHz', 'MHz', '25.2 MHz = 25200000'],
    ['25,2 MHz', 'MHz', '25.2 MHz = 25200000'],
    ['25,2M', 'MHz', '25.2 MHz = 25200000'],
    ['850 mVpp', 'Vpp', '850 mVpp = 17/20'],
    ['1.5e6 Hz', 'MHz', '1500000 Hz = 1500000'],
    ['-12', 'V', '-12 V = -12'],
    ['−12', 'V', '-12 V = -12'],
    ['- 12 V', 'V', '-12 V = -12'],
    ['+5', 'V', '5 V = 5'],
    ['.5', 'V', '0.5 V = 1/2'],
    [',5', 'V', '0.5 V = 1/2'],
    ['5.', 'V', '5 V = 5'],
    ['3V3', 'V', '3.3 V = 33/10'],
    ['-3V3', 'V', '-3.3 V = -33/10'],
    ['12V5', 'V', '12.5 V = 25/2'],
    ['1,000', 'V', '1 V = 1'],
    ['25.2\u00a0MHz', 'MHz', '25.2 MHz = 25200000'],
    ['25.2\u2009MHz', 'MHz', '25.2 MHz = 25200000'],
    ['  25.2\t MHz \n', 'MHz', '25.2 MHz = 25200000'],
    ['14.318 megahertz', 'MHz', '14.318 MHz = 14318000'],
    ['5 volts', 'V', '5 V = 5'],
    ['850 millivolts', 'V', '850 mV = 17/20'],
    ['250 milliamps', 'A', '250 mA = 1/4'],
    ['3 kiloohms', 'Ω', '3 kΩ = 3000'],
    ['3 megohms', 'Ω', '3 MΩ = 3000000'],
    ['85', '°C', '85 °C = 85'],
    ['185 F', '°C', '185 °F = 85'],
    ['45', '%', '45 % = 9/20'],
    ['500 ppm', '%', '500 ppm = 1/2000'],
    ['7', 'counts', '7 counts = 7'],
  ])('understands "%s" for a reading in %s', (typed, unit, understood) => {
    expect(read(typed, unit)).toBe(understood);
  });

  test.each([
    ['4k7', '4.7 kΩ = 4700'],
    ['4K7', '4.7 kΩ = 4700'],
    ['R47', '0.47 Ω = 47/100'],
    ['0R47', '0.47 Ω = 47/100'],
    ['470R', '470 Ω = 470'],
    ['100 R', '100 Ω = 100'],
    ['2M2', '2.2 MΩ = 2200000'],
    ['4k7 ohm', '4.7 kΩ = 4700'],
    ['4k7Ω', '4.7 kΩ = 4700'],
    ['10 kOhm', '10 kΩ = 10000'],
    ['10 k\u2126', '10 kΩ = 10000'],
    ['10 k\u03a9', '10 kΩ = 10000'],
    ['5 mΩ', '5 mΩ = 1/200'],
    ['5 milliohm', '5 mΩ = 1/200'],
    ['5 M', '5 MΩ = 5000000'],
    ['5 Mohm', '5 MΩ = 5000000'],
  ])('understands the resistance "%s"', (typed, understood) => {
    expect(read(typed, 'Ω')).toBe(understood);
  });

  test.each([
    ['1n5', '1.5 nF = 3/2000000000'],
    ['4\u00b57', '4.7 µF = 47/10000000'],
    ['4\u03bc7', '4.7 µF = 47/10000000'],
    ['4u7', '4.7 µF = 47/10000000'],
    ['p33', '0.33 pF = 33/100000000000000'],
    ['1u', '1 µF = 1/1000000'],
    ['100', '100 µF = 1/10000'],
  ])('understands the capacitance "%s" for a reading in µF', (typed, understood) => {
    expect(read(typed, 'µF')).toBe(understood);
  });

  test('gives a bare number the unit and the prefix of the reading', () => {
    expect(read('25', 'MHz')).toBe('25 MHz = 25000000');
    expect(read('25', 'Hz')).toBe('25 Hz = 25');
    expect(read('0.85', 'Vpp')).toBe('0.85 Vpp = 17/20');
  });

  test('gives a bare prefix the unit of the reading, not its prefix', () => {
    expect(read('25M', 'MHz')).toBe('25 MHz = 25000000');
    expect(read('25M', 'Hz')).toBe('25 MHz = 25000000');
    expect(read('850m', 'Vpp')).toBe('850 mVpp = 17/20');
    expect(read('2 meg', 'Ω')).toBe('2 MΩ = 2000000');
  });

  test('reads an impossible letter case as the plausible unit and says so', () => {
    expect(read('25.2 mhz', 'MHz')).toBe('25.2 MHz = 25200000 (read as MHz)');
    expect(read('25 MHZ', 'MHz')).toBe('25 MHz = 25000000 (read as MHz)');
    expect(read('12 v', 'V')).toBe('12 V = 12 (read as V)');
    expect(read('10 KOHM', 'Ω')).toBe('10 kΩ = 10000 (read as kΩ)');
    expect(read('25 m', 'Hz')).toBe('25 MHz = 25000000 (read as MHz)');
    expect(read('5 M', 's')).toBe('5 ms = 1/200 (read as ms)');
    expect(read('100 PF', 'F')).toBe('100 pF = 1/10000000000 (read as pF)');
    expect(read('10 MFD', 'F')).toBe('10 µF = 1/100000 (read as µF)');
  });

  test('asks where both letter cases are plausible, with offers that cannot be misread', () => {
    expect(read('5 m', 'Ω')).toBe('refused: 5 milliohm | 5 MΩ');
    expect(read('5 mohm', 'kΩ')).toBe('refused: 5 milliohm | 5 MΩ');
    expect(read('4m7', 'Ω')).toBe('refused: 4.7 milliohm | 4.7 MΩ');
    expect(read('10 MF', 'F')).toBe('refused: 10 millifarad | 10 µF');
    expect(refusal('5 mohm', 'Ω')).toBe('"mohm" can be milliohm or MΩ');
  });

  test('takes a small m for milli where the reading is in milliohm', () => {
    expect(read('5 m', 'mΩ')).toBe('5 mΩ = 1/200');
    expect(read('5 mohm', 'mΩ')).toContain('5 mΩ = 1/200');
  });

  test.each([
    '850 mVpp',
    '850 mV p-p',
    '850 mV pp',
    '850 mVp-p',
    '850 mVPP',
    '850 mV peak to peak',
    '850 mV pk-pk',
  ])('knows "%s" for peak to peak', (typed) => {
    expect(read(typed, 'Vpp')).toBe('850 mVpp = 17/20');
  });

  test.each([
    ['5 V dc', 'V dc', '5 V dc = 5'],
    ['5 VDC', 'V dc', '5 V dc = 5'],
    ['5 Vdc', 'V dc', '5 V dc = 5'],
    ['5 V d.c.', 'V dc', '5 V dc = 5'],
    ['5 DCV', 'V dc', '5 V dc = 5'],
    ['5 Vac', 'V ac', '5 V ac = 5'],
    ['5 VAC', 'V ac', '5 V ac = 5'],
    ['5 Vrms', 'Vrms', '5 Vrms = 5'],
    ['5 V RMS', 'Vrms', '5 Vrms = 5'],
    ['5 Vpk', 'Vpk', '5 Vpk = 5'],
    ['5 V peak', 'Vpk', '5 Vpk = 5'],
    ['5 volts dc', 'V dc', '5 V dc = 5'],
    ['5 dc', 'V', '5 V dc = 5'],
    ['5 VDC', 'V', '5 V dc = 5'],
    ['20 mA rms', 'mArms', '20 mArms = 1/50'],
  ])('knows the qualifier of "%s" for a reading in %s', (typed, unit, understood) => {
    expect(read(typed, unit)).toBe(understood);
  });

  test('lends an unqualified unit the qualifier of the reading and says so', () => {
    expect(read('850 mV', 'Vpp')).toBe('850 mVpp = 17/20 (read as mVpp)');
    expect(read('5 V', 'V dc')).toBe('5 V dc = 5 (read as V dc)');
  });

  test('refuses another qualifier than the reading has and says why', () => {
    expect(refusal('850 mVrms', 'Vpp')).toBe(
      '"mVrms" is an rms value, and this reading is a peak-to-peak value',
    );
    for (const typed of ['5 Vpp', '5 Vrms', '5 Vac', '5 Vpk']) expect(read(typed, 'V')).toBe('refused: 5 V');
    expect(read('5 V dc', 'Vrms')).toBe('refused: 5 Vrms');
  });

  test.each([
    'OL',
    'ol',
    'O.L',
    'OL.',
    '0L',
    'open',
    'overload',
    'over-range',
    'overrange',
    'over range',
    'OL MΩ',
  ])('knows the overload "%s"', (typed) => {
    expect(read(typed, 'kΩ')).toBe('overload');
  });

  test('takes none as zero only where the reading has such a band', () => {
    expect(read('none', 'MHz', true)).toBe('0 MHz = 0 none');
    expect(read('None', 'MHz', true)).toBe('0 MHz = 0 none');
    expect(read('none', 'V')).toBe('refused: 0 V');
  });

  test.each([
    ['48..52 MHz', '48000000 to 52000000 MHz'],
    ['48 .. 52', '48000000 to 52000000 MHz'],
    ['48 … 52 MHz', '48000000 to 52000000 MHz'],
    ['52..48', '48000000 to 52000000 MHz'],
    ['900k..1,1M', '900000 to 1100000 MHz'],
    ['48 MHz .. 52', '48000000 to 52000000 MHz'],
    ['-1 .. 1', '-1000000 to 1000000 MHz'],
    ['> 200k', '200000 beyond null kHz'],
    ['>200k', '200000 beyond null kHz'],
    ['< 0,5', 'null beyond 500000 MHz'],
    ['>= 3', '3000000 to null MHz'],
    ['≥ 3', '3000000 to null MHz'],
    ['<= 3', 'null to 3000000 MHz'],
    ['≤ 3', 'null to 3000000 MHz'],
  ])('understands the untidy value "%s"', (typed, understood) => {
    expect(read(typed, 'MHz')).toBe(understood);
  });

  test('takes one word for how the value behaves, before or behind it', () => {
    expect(read('25.2 MHz wanders', 'MHz')).toBe('25.2 MHz = 25200000 wanders');
    expect(read('25.2 MHz, wandering', 'MHz')).toBe('25.2 MHz = 25200000 wanders');
    expect(read('floats 1.4', 'V')).toBe('1.4 V = 7/5 floats');
    expect(read('48..52 climbs', 'MHz')).toBe('48000000 to 52000000 MHz climbs');
    expect(read('OL steady', 'Ω')).toBe('overload steady');
    expect(read('3V3 pulses', 'V')).toBe('3.3 V = 33/10 pulses');
    expect(read('wanders', 'V')).toBe('refused: 1 V wanders');
    expect(read('5 V wanders climbs', 'V')).toBe('refused: 5 V wanders | 5 V climbs');
    expect(read('5 X climbs', 'V')).toBe('refused: 5 V climbs');
  });

  test.each([
    ['25.2 Mhertz', 'MHz', 'refused: 25.2 MHz'],
    ['25.2 megahetz', 'MHz', 'refused: 25.2 MHz'],
    ['12 X', 'V', 'refused: 12 V'],
    ['12 V', 'MHz', 'refused: 12 MHz'],
    ['5 kA', 'A', 'refused: 5000 A'],
    ['5 k', 's', 'refused: 5000 s'],
    ['3 µΩ', 'Ω', 'refused: 0.000003 Ω'],
    ['250 mampere', 'A', 'refused: 250 mA'],
    ['1.2.3', 'V', 'refused: 1.23 V | 12.3 V'],
    ['1,234.5', 'V', 'refused: 1234.5 V'],
    ['1.234,5 mV', 'V', 'refused: 1234.5 mV'],
    ['1,234,567', 'Hz', 'refused: 1234567 Hz | 1.234567 Hz'],
    ['14 318 180 Hz', 'MHz', 'refused: 14318180 Hz | 14318.180 Hz'],
    ['25.2 MHz 3', 'MHz', 'refused: 25.2 MHz'],
    ['48..5x', 'MHz', 'refused: 48 .. 5 MHz'],
    ['> 5 X', 'V', 'refused: > 5 V'],
    ['Infinity', 'Ω', 'refused: OL'],
    ['opn', 'Ω', 'refused: open'],
    ['overlod', 'Ω', 'refused: overload'],
    ['', 'V', 'refused: 1 V'],
    ['abc', 'V', 'refused: 1 V'],
    ['NaN', 'V', 'refused: 1 V'],
    ['-', 'V', 'refused: 1 V'],
    ['5 -', 'V', 'refused: 5 V'],
    ['5 ()', 'V', 'refused: 5 V'],
    ['.', 'V', 'refused: 1 V'],
    ['MHz', 'MHz', 'refused: 1 MHz'],
    ['1e999', 'V', 'refused: 1 V'],
    ['1e31', 'V', 'refused: 1 V'],
    [`0.${'0'.repeat(40)}1`, 'V', 'refused: 1 V'],
    ['4.7k7', 'Ω', 'refused: 4.7 kΩ'],
    ['1 2', 'V', 'refused: 12 V | 1.2 V'],
    ['٣', 'V', 'refused: 1 V'],
  ])('refuses "%s" for a reading in %s and offers the nearest', (typed, unit, refused) => {
    expect(read(typed, unit)).toBe(refused);
  });

  test('refuses a text of absurd length without looking into it', () => {
    expect(refusal('1'.repeat(65), 'V')).toBe('This is 65 characters long, and a value has at most 64');
    expect(read('1'.repeat(100_000), 'V')).toBe('refused: 1 V');
  });

  test('says what was not understood', () => {
    expect(refusal('25.2 Mhertz', 'MHz')).toBe('"Mhertz" is not a unit of this reading, which is in MHz');
    expect(refusal('12 V', 'MHz')).toBe('"V" is another kind of unit: this is read in MHz');
    expect(refusal('1,234.5', 'V')).toContain('both a comma and a point');
    expect(refusal('abc', 'V')).toBe('"abc" holds no number');
    expect(refusal('= 5', 'V')).toBe('"= 5" does not begin with a number');
    expect(refusal('>', 'V')).toBe('">" has no value behind it');
    expect(refusal('≤ climbs', 'V')).toBe('"≤" has no value behind it');
    expect(refusal('5 ..', 'V')).toBe(
      '"5 .." is a range with one end: type both, or a value that it is above or below',
    );
    expect(refusal('..V', 'V')).toBe('"..V" holds no digit');
    expect(refusal('', 'V')).toBe('Nothing was typed');
  });

  test('keeps exactly what was typed, however many digits', () => {
    expect(read('14.31818181818181818181 MHz', 'MHz')).toBe(
      '14.3182 MHz = 1431818181818181818181/100000000000000',
    );
  });
});
