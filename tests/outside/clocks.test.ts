import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { evaluateFormula, parseFormula } from '../../engine/formula/index.ts';
import { printQuantity, toStored } from '../../engine/quantity/index.ts';
import { fractionOfNominal, observe, resolveScale } from '../../engine/scale/index.ts';
import { expecting, settingsOf, taken, verdict } from '../engine/scale/quantity-reading.ts';

/** The exact value of a formula in base units, through our own parser. */
function exact(text: string): Fraction {
  const value = evaluateFormula(taken(parseFormula(text)), () => null);
  if (value.kind !== 'value') throw new Error(`Expected a value for "${text}"`);
  return value.value;
}

const printed = (text: string, unit: string): string => printQuantity(toStored(exact(text), unit));

/** How far a frequency is off, in millionths of what it should be. */
const ppm = (text: string, nominal: string): number =>
  exact(`(${text}) / (${nominal}) - 1`).mul(1_000_000).valueOf();

describe('the 315/88 MHz family', () => {
  // Colour subcarrier 315/88 MHz = 3.579545… MHz, EIA RS-170A. found second-hand: https://delorie.com/archives/browse.cgi?p=djgpp-workers%2F2003%2F05%2F30%2F19%3A55%3A31.1
  // "3.579545 MHz +/- 10 Hz … 455/2 times the horizontal sweep rate"; "Which reduces to 315/88 MHz" found in a post on precise time (2016-10-18, data-set copy).
  const subcarrier = '315 MHz / 88';

  test('OSC is four times the subcarrier: exactly 315/22 MHz', () => {
    expect(exact(`${subcarrier} * 4`).equals(new Fraction(315_000_000, 22))).toBe(true);
    expect(printed(`${subcarrier} * 4`, 'MHz')).toBe('14.3182 MHz');
  });

  // 69.841 ns: computed.
  test('OSC has a period of 69.841 ns', () => {
    expect(printed('1 / (315 MHz / 22)', 'ns')).toBe('69.8413 ns');
  });

  // 5160 Technical Reference, System Board 1-21. found: https://www.easymanua.ls/ibm/xt-5160/manual?p=42
  // "divide-by-3 of the oscillator and has a period of 210ns (4.77MHz)"
  test('the CPU clock of an 8088 board is OSC / 3: exactly 105/22 MHz, 209.52 ns', () => {
    expect(exact('315 MHz / 22 / 3').equals(new Fraction(105_000_000, 22))).toBe(true);
    expect(printed('315 MHz / 22 / 3', 'MHz')).toBe('4.77273 MHz');
    expect(printed('1 / (315 MHz / 22 / 3)', 'ns')).toBe('209.524 ns');
    expect(verdict(expecting('315 MHz / 22 / 3 ± 0.1 %', 'MHz'), '4.77 MHz')).toBe('good');
  });

  // found: http://x-hacker.org/ng/peter_norton/ng178e4.html "one-twelfth of the base rate"; the value computed.
  test('the timer clock is OSC / 12: exactly 105/88 MHz', () => {
    expect(exact('315 MHz / 22 / 12').equals(new Fraction(105_000_000, 88))).toBe(true);
    expect(printed('315 MHz / 22 / 12', 'MHz')).toBe('1.19318 MHz');
  });

  // computed; about 18.2 a second found: https://we.poppur.com/thread-798851-1-1.html
  test('the timer ticks at 18.206509677 Hz, every 54.9254095 ms', () => {
    expect(exact('105 MHz / 88 / 65536').valueOf()).toBeCloseTo(18.206509677, 9);
    expect(exact('1 / (105 MHz / 88 / 65536)').valueOf()).toBeCloseTo(0.0549254095, 10);
    expect(printed('105 MHz / 88 / 65536', 'Hz')).toBe('18.2065 Hz');
  });

  test('a subcarrier typed to its printed digits is within the ± 10 Hz of RS-170A', () => {
    const reading = expecting('315 MHz / 88 ± 10 Hz', 'MHz');
    expect(
      ['3.579545', '3,579545M', '3579545 Hz', '3.579556', '3.579535'].map((typed) => verdict(reading, typed)),
    ).toEqual(['good', 'good', 'good', 'high', 'low']);
  });
});

describe('the clock crystal', () => {
  // found: https://moviecultists.com/why-rtc-clock-is-32-768khz "exactly 2^15 cycles per second"
  test('divides down to one second by 2 to the 15th', () => {
    const seen = taken(observe(expecting('32768 Hz ± 20 ppm', 'kHz'), settingsOf({}), '32.768 kHz'));
    expect(seen.understood).toEqual({ kind: 'quantity', quantity: { value: String(2 ** 15), unit: 'kHz' } });
    expect(exact('32.768 kHz / 32768').toFraction()).toBe('1');
  });

  // computed; "One PPM is 30 seconds a year" found: https://www.mail-archive.com/neonixie-l@googlegroups.com/msg02142.html
  test('drifts 1.728 s a day at 20 ppm and 31.6 s a year at 1 ppm', () => {
    expect(printed('86400 s * 20 ppm', 's')).toBe('1.728 s');
    expect(printed('365.25 * 86400 s * 1 ppm', 's')).toBe('31.5576 s');
  });
});

describe('USB clocks', () => {
  // USB 2.0, 7.1.11. found second-hand, verbatim: http://www.elektronik-kompendium.de/forum/forum_entry.php?category=all&id=217860&page=273
  // "(TFDRATE) is 12.000 Mb/s ±0.25% (2,500 ppm)"; low speed 1.50 Mb/s ±1.5% (15,000 ppm) and high speed 480.00 Mb/s ±500 ppm, same quote.
  test('full speed is good from 11.970 to 12.030 million bits a second', () => {
    const reading = expecting('12 MHz ± 2500 ppm', 'MHz');
    expect(['11.9699', '11.970', '12.030', '12.0301'].map((typed) => verdict(reading, typed))).toEqual([
      'low',
      'good',
      'good',
      'high',
    ]);
    expect(verdict(expecting('12 MHz ± 0.25 %', 'MHz'), '11.970')).toBe('good');
  });

  test('the tolerances of low and high speed are the same in per cent and in ppm', () => {
    for (const typed of ['1.4774', '1.4775', '1.5225', '1.5226']) {
      expect(verdict(expecting('1.5 MHz ± 15000 ppm', 'MHz'), typed)).toBe(
        verdict(expecting('1.5 MHz ± 1.5 %', 'MHz'), typed),
      );
    }
    expect(verdict(expecting('480 MHz ± 500 ppm', 'MHz'), '479.76')).toBe('good');
    expect(verdict(expecting('480 MHz ± 500 ppm', 'MHz'), '479.7599')).toBe('low');
  });

  // 48 MHz from OSC: × 352/105 exact and × 107/32 found: https://electronics.stackexchange.com/questions/202453/ ; × 57/17 from memory (medium); all computed.
  const osc = '315 MHz / 22';
  const judged = (ratio: string): string => {
    const value = toStored(exact(`${osc} * ${ratio}`), 'Hz');
    // Typed to the full width of a counter.
    const typed = `${new Fraction(value.value).valueOf().toFixed(3)} Hz`;
    return verdict(expecting('48 MHz ± 2500 ppm', 'MHz'), typed);
  };

  test('OSC × 352/105 is exactly 48 MHz', () => {
    expect(exact(`${osc} * 352 / 105`).toFraction()).toBe('48000000');
    expect(judged('352 / 105')).toBe('good');
  });

  test('OSC × 57/17 is 48.008021 MHz, 167.1 ppm high, and passes', () => {
    expect(exact(`${osc} * 57 / 17`).valueOf()).toBeCloseTo(48_008_021, -1);
    expect(ppm(`${osc} * 57 / 17`, '48 MHz')).toBeCloseTo(167.1, 1);
    expect(judged('57 / 17')).toBe('good');
  });

  test('OSC × 107/32 is 47.876420 MHz, 2574.6 ppm low, and fails by 75 ppm', () => {
    expect(exact(`${osc} * 107 / 32`).valueOf()).toBeCloseTo(47_876_420, -1);
    expect(ppm(`${osc} * 107 / 32`, '48 MHz')).toBeCloseTo(-2574.6, 1);
    expect(judged('107 / 32')).toBe('low');
    expect(verdict(expecting('48 MHz ± 2574 ppm', 'MHz'), '47876420 Hz')).toBe('low');
    expect(verdict(expecting('48 MHz ± 2575 ppm', 'MHz'), '47876420 Hz')).toBe('good');
  });
});

describe('a PCI clock made from OSC', () => {
  // × 149/64 found: https://electronics.stackexchange.com/questions/202453/ "149/16÷4"; 33.334517 MHz and 29.99893 ns computed.
  // PCI 2.x cycle time at least 30 ns. found in a compliant part's sheet: http://hkdtupc.cn/sna7412zhk_datasheet_5012309_181.html "tcyc 30 ns"
  test('by 149/64 is 33.334517 MHz, and 35 ppm too fast for the 30 ns of the bus', () => {
    expect(exact('315 MHz / 22 * 149 / 64').valueOf()).toBeCloseTo(33_334_517, -1);
    expect(printed('1 / (315 MHz / 22 * 149 / 64)', 'ns')).toBe('29.9989 ns');
    expect(ppm('1 / (315 MHz / 22 * 149 / 64)', '30 ns')).toBeCloseTo(-35.5, 1);
    expect(verdict(expecting('≥ 30 ns', 'ns'), '29.99893 ns')).toBe('low');
  });
});

describe('outputs that are all off by one factor', () => {
  // computed: 25.2 of 40 and 42 of 66.67 are the same share.
  test('show it as a share of what they should be', () => {
    const share = (expect: string, typed: string): number | null => {
      const reading = expecting(expect, 'MHz');
      return fractionOfNominal(
        taken(observe(reading, settingsOf({}), typed)),
        resolveScale(reading, settingsOf({})),
      );
    };
    expect(share('40 MHz ± 1 %', '25,2M')).toBe(0.63);
    expect(share('200 MHz / 3 ± 1 %', '42')).toBe(0.63);
  });
});
