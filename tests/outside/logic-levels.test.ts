import { describe, expect, test } from 'vitest';
import { expectedText } from '../../engine/scale/index.ts';
import { expecting, scaled, settingsOf, verdict } from '../engine/scale/quantity-reading.ts';

const verdicts = (reading: Parameters<typeof verdict>[0], ...typed: readonly string[]) =>
  typed.map((value) => verdict(reading, value));

describe('logic levels', () => {
  // 5 V TTL: input low at most 0.8 V, high at least 2.0 V. found: https://jorisvr.nl/article/logic-levels (a survey of 13 sources)
  // 3.3 V LVTTL has the same two (levels found there; the clause of JESD8 itself from memory, high).
  test('a TTL input reads low below 0.8 V and high from 2.0 V', () => {
    const input = scaled('low < 0.8 V < between < 2 V < high', 'V', 'low');
    expect(verdicts(input, '0.4', '0.8', '0.81', '1.99', '2', '2.4')).toEqual([
      'low',
      'low',
      'between',
      'between',
      'high',
      'high',
    ]);
    const released = scaled('low < 0.8 V < between < 2 V < high', 'V', 'high');
    expect(verdicts(released, '0.79', '0.8', '2')).toEqual(['low', 'between', 'high']);
  });

  // TTL outputs: low at most 0.4 V, high at least 2.4 V. found, same survey; sources give 0.4–0.5 V and 2.4–2.7 V, the common ones are taken.
  test('a TTL output is good low up to 0.4 V and good high from 2.4 V', () => {
    expect(verdicts(expecting('≤ 0.4 V', 'V'), '400 mV', '0.41')).toEqual(['good', 'high']);
    expect(verdicts(expecting('≥ 2.4 V', 'V'), '2.39', '2.4')).toEqual(['low', 'good']);
  });

  // 5 V CMOS: high from 70 % of the supply, low to 30 %. found: https://tedspweb.teldevice.co.jp/print/faq/4902?category_id=421&site_domain=ted_product
  // and 1.35 V to 3.5 V in the survey above.
  test('a CMOS input goes by the supply: 1.5 V and 3.5 V of 5 V, 0.99 V and 2.31 V of 3.3 V', () => {
    const input = scaled('low < vcc * 30 % < between < vcc * 70 % < high', 'V', 'low');
    const at5 = settingsOf({ vcc: '5 V' });
    const at33 = settingsOf({ vcc: '3.3 V' });
    expect(['1.5', '1.51', '3.49', '3.5'].map((typed) => verdict(input, typed, at5))).toEqual([
      'low',
      'between',
      'between',
      'high',
    ]);
    expect(['0.99', '1', '2.3', '2.31'].map((typed) => verdict(input, typed, at33))).toEqual([
      'low',
      'between',
      'between',
      'high',
    ]);
    expect(expectedText(input, at33)).toBe('at most 0.99 V');
  });
});

describe('memory supplies', () => {
  // PC SDRAM specification 1.1: 3.0 V to 3.6 V. found: https://www.easymanua.ls/intel/740/manual?p=241 "VCC Supply Voltage 3.0 3.6 V"
  test('SDRAM is good from 3.0 V to 3.6 V', () => {
    expect(verdicts(expecting('3.3 V ± 0.3 V', 'V'), '2.99', '3.0', '3V6', '3.61')).toEqual([
      'low',
      'good',
      'good',
      'high',
    ]);
  });

  // DDR: 2.3 V to 2.7 V. found: http://hkdtupc.cn/k4h641638c-tlb0_datasheet_16254961_39.html
  test('DDR is good from 2.3 V to 2.7 V', () => {
    expect(verdicts(expecting('2.5 V ± 0.2 V', 'V'), '2.29', '2V3', '2.7', '2.71')).toEqual([
      'low',
      'good',
      'good',
      'high',
    ]);
  });
});

describe('a serial port', () => {
  // EIA RS-232-C, by the 5150 Technical Reference 2-128. found: https://www.easymanua.ls/ibm/5150/manual/163587?p=147
  // mark below -3 V, space above +3 V, between them invalid, beyond ±15 V invalid.
  test('reads mark below -3 V and space above +3 V', () => {
    const line = scaled(
      'beyond < -15 V < mark < -3 V < invalid < 3 V < space < 15 V < too-high',
      'V',
      'mark',
      'space',
    );
    expect(verdicts(line, '-16', '−12', '-3.1', '-2.9', '0', '2.9', '+3.1', '12', '16')).toEqual([
      'beyond',
      'mark',
      'mark',
      'invalid',
      'invalid',
      'invalid',
      'space',
      'space',
      'too-high',
    ]);
  });

  // EIA/TIA-232 driver: 5 V to 15 V either way into its load: from memory (high).
  test('drives each way by at least 5 V', () => {
    expect(verdicts(expecting('-15 V .. -5 V', 'V'), '-4', '-5', '-15', '-16')).toEqual([
      'low',
      'good',
      'good',
      'high',
    ]);
    expect(verdicts(expecting('5 V .. 15 V', 'V'), '4', '5', '15', '16')).toEqual([
      'low',
      'good',
      'good',
      'high',
    ]);
  });
});
