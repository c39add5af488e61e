import { describe, expect, test } from 'vitest';
import { expectedText } from '../../engine/scale/index.ts';
import { expecting, scaled, settingsOf, verdict } from '../engine/scale/quantity-reading.ts';

/** What our own judgement makes of a value: the author's words through the parser, the typed text through the reader. */
const verdicts = (expect: string, unit: string, ...typed: readonly string[]) =>
  typed.map((value) => verdict(expecting(expect, unit), value));

const limits = (expect: string, unit: string) => expectedText(expecting(expect, unit), settingsOf({}));

describe('the rails of an ATX12V supply', () => {
  // ATX12V Power Supply Design Guide v2.0, 3.2.1 Table 2.
  // found: https://manualsdump.com/en/manuals/intel-atx12v/109764/11 "+12V1DC ±5% +11.40 +12.00 +12.60 Volts"
  test('+12 V is good from 11.40 V to 12.60 V', () => {
    expect(limits('12 V ± 5 %', 'V')).toBe('11.4 V .. 12.6 V');
    expect(verdicts('12 V ± 5 %', 'V', '11.3999', '11.40', '12.00', '12.60', '12.6001')).toEqual([
      'low',
      'good',
      'good',
      'good',
      'high',
    ]);
  });

  // The same table, note (1). found, same page: "At +12 VDC peak loading, regulation at the +12 VDC output can go to ± 10%"
  test('+12 V at peak load is good from 10.80 V to 13.20 V', () => {
    expect(verdicts('12 V ± 10 %', 'V', '10.79', '10.80', '13.20', '13.21')).toEqual([
      'low',
      'good',
      'good',
      'high',
    ]);
  });

  // The same table. found, same page.
  test('+5 V and +5 V standby are good from 4.75 V to 5.25 V', () => {
    expect(verdicts('5 V ± 5 %', 'V', '4.7499', '4.75', '5,25', '5.2501')).toEqual([
      'low',
      'good',
      'good',
      'high',
    ]);
  });

  // The same table prints "+3.14 +3.30 +3.47" (found, same page), which is rounded. Ours are the exact 5 %: 3.135 V and 3.465 V (computed).
  test('+3.3 V is good from exactly 3.135 V to exactly 3.465 V', () => {
    expect(limits('3.3 V ± 5 %', 'V')).toBe('3.135 V .. 3.465 V');
    expect(verdicts('3.3 V ± 5 %', 'V', '3.1349', '3.135', '3.14', '3.465', '3.47')).toEqual([
      'low',
      'good',
      'good',
      'good',
      'high',
    ]);
  });

  // ATX 2.1 era, ± 4 %. found second-hand: https://www.oreilly.com/library/view/pc-hardware-in/059600513X/ch26s02s01.html "+3.3VDC ±4% +3.168V"
  // Editions differ from the ± 5 % above, so a tree has to state its edition.
  test('+3.3 V of an earlier edition is good from 3.168 V to 3.432 V', () => {
    expect(limits('3.3 V ± 4 %', 'V')).toBe('3.168 V .. 3.432 V');
    expect(verdicts('3.3 V ± 4 %', 'V', '3.167', '3.168', '3.432', '3.433')).toEqual([
      'low',
      'good',
      'good',
      'high',
    ]);
  });

  // ATX12V PSDG v1.x Table 3. found second-hand: https://forums.anandtech.com/threads/what-is-the-minus-voltage-rail-in-power-supplys.1681560
  // "-12VDC ±10% -10.80 -12.00 -13.20 Volts"; -5 V ± 10 % on the same page.
  test('the negative rails are low when they are near to ground', () => {
    expect(verdicts('-12 V ± 10 %', 'V', '-10.79', '-10.80', '−12', '-13.20', '-13.21')).toEqual([
      'low',
      'good',
      'good',
      'good',
      'high',
    ]);
    expect(verdicts('-5 V ± 10 %', 'V', '-4.49', '-4.50', '-5.50', '-5.51')).toEqual([
      'low',
      'good',
      'good',
      'high',
    ]);
  });
});

describe('PWR_OK of an ATX12V supply', () => {
  // ATX12V PSDG v1.1 Table 14 (v0.9 Table 9). found: https://manualshive.com/ru/manual/enhance/atx/2413178?page=18 "100 ms < T3 < 500 ms"
  // Named by parameter and not by T number, which editions permute. The table excludes its ends; a limit of ours belongs to the good side.
  test('comes between 100 ms and 500 ms after the outputs', () => {
    expect(verdicts('100 ms .. 500 ms', 'ms', '99', '101 ms', '0.3 s', '499,9', '501')).toEqual([
      'low',
      'good',
      'good',
      'good',
      'high',
    ]);
  });

  // The same table, found, same page: rise time at most 10 ms, hold-up at least 16 ms, warning at least 1 ms.
  test('rises, holds up and warns in time', () => {
    expect(verdicts('≤ 10 ms', 'ms', '10', '10.1')).toEqual(['good', 'high']);
    expect(verdicts('≥ 16 ms', 'ms', '15.9', '16')).toEqual(['low', 'good']);
    expect(verdicts('at least 1 ms', 'ms', '999 µs', '1')).toEqual(['low', 'good']);
  });

  // The same table, found, same page: low below 0.4 V, high 2.4 V to 5 V.
  test('is low below 0.4 V and high from 2.4 V to 5 V', () => {
    const level = scaled('low < 0.4 V < between < 2.4 V < high < 5 V < too-high', 'V', 'high');
    expect(['0.39', '400 mV', '2.39', '2.4', '5', '5.01'].map((typed) => verdict(level, typed))).toEqual([
      'low',
      'between',
      'between',
      'high',
      'high',
      'too-high',
    ]);
  });

  // v1.1 Table 15 (PS_ON#), found, same page: low at most 0.8 V, high at least 2.0 V.
  test('PS_ON# is on up to 0.8 V and off from 2.0 V', () => {
    expect(verdicts('≤ 0.8 V', 'V', '0.8', '0.81')).toEqual(['good', 'high']);
    expect(verdicts('≥ 2.0 V', 'V', '1.99', '2')).toEqual(['low', 'good']);
  });

  // ATX 3.0 design guide 336521 Table 4-9. found: https://manualshive.com/en/manual/intel/atx-3-0/2071598?page=37 "T3 100–250 ms required"
  test('of a supply of 2020 and later comes between 100 ms and 250 ms', () => {
    expect(verdicts('100 ms .. 250 ms', 'ms', '240', '260')).toEqual(['good', 'high']);
  });
});

describe('an AT supply', () => {
  // 5170 Technical Reference p. 3-5. found: http://www.manualslib.com/manual/945823/Ibm-5170.html?page=115
  // "turn-on delay of at least 100 milliseconds but not longer than 500 milliseconds"
  test('raises power-good from 100 ms to 500 ms after switch-on, both included', () => {
    expect(verdicts('100 ms .. 500 ms', 'ms', '99.9', '100', '500', '500.1')).toEqual([
      'low',
      'good',
      'good',
      'high',
    ]);
  });

  // The same page, found: power-good goes low at least 1 ms before an output leaves regulation.
  test('drops power-good at least 1 ms before an output fails', () => {
    expect(verdicts('at least 1 ms', 'ms', '0.5', '1', '1000 µs', '2 ms')).toEqual([
      'low',
      'good',
      'good',
      'good',
    ]);
  });

  // The same book, p. 3-6, sense levels +4.5, -3.75, +10.8, -10.4 Vdc: from memory (medium), the figure was not reached.
  test('senses each rail at its own level', () => {
    expect(verdicts('≥ 4.5 V', 'V dc', '4.4 VDC', '4.5 V dc')).toEqual(['low', 'good']);
    expect(verdicts('≥ 10.8 V', 'V', '10.7', '10.8')).toEqual(['low', 'good']);
    const minus12 = scaled('good < -10.4 V < weak < 0 V < wrong', 'V', 'good');
    expect(['-12', '-10.4', '-10'].map((typed) => verdict(minus12, typed))).toEqual(['good', 'good', 'weak']);
  });
});
