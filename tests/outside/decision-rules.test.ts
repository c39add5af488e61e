import { describe, expect, test } from 'vitest';
import {
  acceptanceInterval,
  conformanceProbability,
  type FourWay,
  fourWayVerdict,
  globalRisks,
  type Tolerance,
  verdictOf,
} from '../../engine/doubt/decision/index.ts';
import { parseInstrument } from '../../engine/doubt/index.ts';
import type { Equipment } from '../../engine/model/instrument.ts';
import { observe } from '../../engine/scale/index.ts';
import { expecting, settingsOf, taken } from '../engine/scale/quantity-reading.ts';

const only = (high: number): Tolerance => ({ low: null, high });

// JCGM 106:2012, clause 7. Formulas and the inputs of the first two examples from memory; results computed.
describe('conformance probability', () => {
  test('a Zener diode of −5.47 V with u = 0.05 V keeps its limit of −5.40 V with 92 %', () => {
    const probability = conformanceProbability(only(-5.4), -5.47, 0.05);
    expect(probability).toBeCloseTo(0.91924, 5);
    expect(probability.toFixed(2)).toBe('0.92');
  });

  test('an SAE 40 oil of 13.6 mm²/s with u = 1.8 mm²/s lies within 12.5 to 16.3 with 66 %', () => {
    const probability = conformanceProbability({ low: 12.5, high: 16.3 }, 13.6, 1.8);
    expect(probability).toBeCloseTo(0.6626, 3);
    expect(probability.toFixed(2)).toBe('0.66');
  });

  // JCGM 106:2012, Table 1 prints 0.84, 1.28, 1.64, 2.33, 3.09. from memory; all z computed
  test.each([
    [0.8, 0.8416],
    [0.9, 1.2816],
    [0.95, 1.6449],
    [0.975, 1.96],
    [0.99, 2.3263],
    [0.999, 3.0902],
  ])('one limit is kept with %f where it is %f standard uncertainties away', (probability, z) => {
    expect(conformanceProbability(only(z), 0, 1)).toBeCloseTo(probability, 4);
    expect(conformanceProbability({ low: -z, high: null }, 0, 1)).toBeCloseTo(probability, 4);
  });

  // Φ as test constants elsewhere: found: "0.8413", "0.9772", "0.9987", "0.9332"; more digits computed
  test.each([
    [0.5, 0.69146],
    [1, 0.84134],
    [1.5, 0.93319],
    [2, 0.97725],
    [3, 0.99865],
  ])('the normal distribution up to %f holds %f', (z, probability) => {
    expect(conformanceProbability(only(z), 0, 1)).toBeCloseTo(probability, 5);
  });

  // JCGM 106:2012, clause 8, guarded rejection. from memory; computed
  test('a speed is above 100 km/h for sure (99.9 %) from 107 km/h on, where u is 2 % of it', () => {
    const isAbove = (v: number) => 1 - conformanceProbability(only(100), v, 0.02 * v) >= 0.999;
    expect([106.5, 106.6, 107].map(isAbove)).toEqual([false, true, true]);
  });
});

// JCGM 106:2012, clause 9. Parameters found (a worked Octave file); about 1 % and 7 % from memory; digits computed
describe('global risks of 1500 Ω resistors', () => {
  const process = { mean: 1500, deviation: 0.12, uncertainty: 0.04 };
  const tolerance = { low: 1499.8, high: 1500.2 };

  test('guarded acceptance from 1499.82 Ω to 1500.18 Ω: 1 % for the consumer, 7 % for the producer', () => {
    const { consumer, producer } = globalRisks(process, tolerance, { low: 1499.82, high: 1500.18 });
    expect(consumer).toBeCloseTo(0.00988, 5);
    expect(producer).toBeCloseTo(0.069, 4);
    expect([Math.round(consumer * 100), Math.round(producer * 100)]).toEqual([1, 7]);
  });

  test('simple acceptance: 1.89 % for the consumer, 3.72 % for the producer', () => {
    const { consumer, producer } = globalRisks(process, tolerance, tolerance);
    expect(consumer).toBeCloseTo(0.0189, 4);
    expect(producer).toBeCloseTo(0.0372, 4);
  });

  test('before any measurement, 90.44 % of them are good', () => {
    expect(conformanceProbability(tolerance, process.mean, process.deviation)).toBeCloseTo(0.9044, 4);
  });
});

// ILAC-G8:09/2019, 4.2.3, p. 10. found: https://fliphtml5.com/szbrq/ktfm/ILAC_G8_09_2019_Quy_tac_ra_QD/10
describe('the four-way verdict', () => {
  test.each<readonly [number, FourWay]>([
    [9, 'pass'],
    [9.8, 'pass'],
    [9.81, 'conditional pass'],
    [10, 'conditional pass'],
    [10.01, 'conditional fail'],
    [10.2, 'conditional fail'],
    [10.21, 'fail'],
  ])('%f against a limit of 10 with a guard band of 0.2', (y, verdict) => {
    expect(fourWayVerdict(only(10), y, 0.2)).toBe(verdict);
    expect(fourWayVerdict({ low: -10, high: null }, -y, 0.2)).toBe(verdict);
  });

  test('nothing passes where the guard bands fill the tolerance', () => {
    expect(acceptanceInterval({ low: 0, high: 1 }, 0.6)).toBe(null);
    expect(fourWayVerdict({ low: 0, high: 1 }, 0.5, 0.6)).toBe('conditional pass');
  });
});

// ILAC-G8:09/2019, Table 1: w = 3U < 1 ppm, 1.5U < 0.16 %, 1U < 2.5 %, 0.83U < 5 %, 0 < 50 %.
// found second-hand: http://findhealthclinics.com/NL/Nederwetten/355649698732075/HarperMetrology and
// http://tla.sgs.com/thelabsgs/Decision-Rule.php ; the exact risks computed
describe('guard bands as parts of U = 2u', () => {
  test.each([
    [0, 0.5, 0.5],
    [0.83, 0.05, 0.0485],
    [1, 0.025, 0.0228],
    [1.5, 0.0016, 0.00135],
    [3, 1e-6, 1e-9],
  ])('w = %f U lets a bad value pass at the acceptance limit with at most %f', (r, most, exactly) => {
    const u = 0.1;
    const accepted = acceptanceInterval(only(10), r * 2 * u)?.high ?? Number.NaN;
    const risk = 1 - conformanceProbability(only(10), accepted, u);
    expect(risk).toBeLessThanOrEqual(most);
    expect(risk).toBeCloseTo(exactly, 4);
  });

  // Specification 10 ± 1 and U = 0.2 found on the first of these pages; limits computed
  test.each([
    [0.83, 9.166, 10.834],
    [1, 9.2, 10.8],
    [1.5, 9.3, 10.7],
    [3, 9.6, 10.4],
  ])('10 ± 1 with U = 0.2 and w = %f U is accepted from %f to %f', (r, low, high) => {
    const accepted = acceptanceInterval({ low: 9, high: 11 }, r * 0.2);
    expect(accepted?.low).toBeCloseTo(low, 12);
    expect(accepted?.high).toBeCloseTo(high, 12);
  });
});

// Joined from the rail limits, the accuracy of a meter and the rules above; computed
describe('a rail that was measured with a meter', () => {
  const equipment = (line: string): Equipment => ({
    instruments: [taken(parseInstrument(line))],
    lacking: [],
    rule: 'guarded',
  });
  const verdict = (rail: string, typed: string, line: string) => {
    const reading = expecting(rail, 'V');
    const found = verdictOf(reading, taken(observe(reading, settingsOf({}), typed, equipment(line))));
    return found && [found.verdict, found.probability.toFixed(3)];
  };

  test('3.150 V of 3.3 V ± 5 % with ± (0.5 % + 2 × 1 mV) is a conditional pass with 0.928', () => {
    expect(verdict('3.3 V ± 5 %', '3.150', 'meter (meter): 6 V ± (0.5 % + 2) at 1 mV')).toEqual([
      'conditional pass',
      '0.928',
    ]);
    // The acceptance limit is 3.1555 V
    expect(verdict('3.3 V ± 5 %', '3.155', 'meter (meter): 6 V ± (0.5 % + 2) at 1 mV')?.[0]).toBe(
      'conditional pass',
    );
    expect(verdict('3.3 V ± 5 %', '3.156', 'meter (meter): 6 V ± (0.5 % + 2) at 1 mV')?.[0]).toBe('pass');
  });

  test.each([
    ['4.80', 'conditional pass', '0.975'],
    ['4.76', 'conditional pass', '0.654'],
    ['4.74', 'conditional fail', '0.346'],
    ['4.81', 'pass', '0.991'],
    ['4.69', 'fail', '0.008'],
  ])('%s V of a 5 V rail on the 60 V range is a %s with %s', (typed, way, probability) => {
    expect(verdict('5 V ± 5 %', typed, 'meter (meter): 60 V ± (0.5 % + 2) at 10 mV')).toEqual([
      way,
      probability,
    ]);
  });

  test('has no verdict without an instrument, and none of an untidy value', () => {
    expect(verdict('5 V ± 5 %', '4.80', 'counter (counter): 1 GHz ± 1 ppm')).toBe(null);
    expect(verdict('5 V ± 5 %', '4.7..4.8', 'meter (meter): 60 V ± 1 %')).toBe(null);
  });
});
