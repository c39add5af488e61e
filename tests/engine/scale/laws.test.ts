import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { noEquipment, parseInstrument } from '../../../engine/doubt/index.ts';
import type { Formula } from '../../../engine/model/formula.ts';
import type { Equipment } from '../../../engine/model/instrument.ts';
import type { Understood } from '../../../engine/model/observation.ts';
import type { Reading } from '../../../engine/model/reading.ts';
import type { SettingValue } from '../../../engine/model/setting.ts';
import { exactOf, toStored } from '../../../engine/quantity/index.ts';
import {
  allNormal,
  bandsOf,
  checkScale,
  eachBands,
  judge,
  observe,
  parseBeeps,
  parseCodes,
  parseExpect,
  parseScale,
  resolveScale,
} from '../../../engine/scale/index.ts';
import { quantitySetting, readingOf, settingsOf, taken } from './quantity-reading.ts';

const fraction = fc
  .tuple(fc.integer({ min: -10_000, max: 10_000 }), fc.constantFrom(1, 2, 3, 7, 10, 1000))
  .map(([n, d]) => new Fraction(n, d));

/** A reading whose limits are numbers or settings, in ascending order, and the value of each setting. */
interface Cut {
  readonly reading: Reading;
  readonly limits: readonly Fraction[];
  readonly settings: ReadonlyMap<string, SettingValue>;
}

const cut: fc.Arbitrary<Cut> = fc
  .tuple(
    fc.uniqueArray(fraction, { minLength: 1, maxLength: 6, selector: (value) => value.toFraction() }),
    fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }),
    fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
    fc.constantFrom('V', 'MHz', '°C', '%', 'kΩ'),
  )
  .map(([values, isNormal, isSetting, unit]) => {
    const limits = [...values].sort((a, b) => a.compare(b));
    const bands = [...limits.keys(), limits.length].map((at) => `band-${at}`);
    const formulas = limits.map(
      (limit, at): Formula =>
        isSetting[at] ? { kind: 'name', name: `s${at}` } : { kind: 'quantity', value: exactOf(limit), unit },
    );
    const scale = { written: 'drawn', bands, limits: formulas, byMagnitude: false, nominal: null };
    const normal = bands.filter((_, at) => isNormal[at]);
    return {
      reading: readingOf({ kind: 'quantity', unit, scale }, normal),
      limits,
      settings: new Map(limits.map((limit, at) => [`s${at}`, toStored(limit, unit)])),
    };
  });

/** A scale and values that are likely to meet its limits. */
const cutWithValues = cut.chain((drawn) =>
  fc.tuple(
    fc.constant(drawn),
    fc.oneof(fraction, fc.constantFrom(...drawn.limits)),
    fc.oneof(fraction, fc.constantFrom(...drawn.limits)),
  ),
);

const point = (value: Fraction): Understood => ({
  kind: 'quantity',
  quantity: { value: exactOf(value), unit: 'V' },
});

const bandsAt = ({ reading, settings }: Cut, understood: Understood) =>
  judge(reading, resolveScale(reading, { settings, twins: new Map() }), understood);

describe('the laws of scales', () => {
  test('any value falls in exactly one band, limits included', () => {
    fc.assert(
      fc.property(cutWithValues, ([drawn, value]) => {
        const bands = bandsAt(drawn, point(value));
        expect(bands).toHaveLength(1);
        // Inside a band, arithmetic decides; on a limit, one of its two neighbours has it.
        const below = drawn.limits.filter((limit) => limit.lt(value)).length;
        const upTo = drawn.limits.filter((limit) => limit.lte(value)).length;
        expect([`band-${below}`, `band-${upTo}`]).toContain(bands[0]);
      }),
      { numRuns: 2000 },
    );
  });

  test("a limit is its normal neighbour's, and the upper one's if both or neither are normal", () => {
    fc.assert(
      fc.property(cut, (drawn) => {
        const { reading, limits } = drawn;
        for (const [at, limit] of limits.entries()) {
          const [below, above] = [`band-${at}`, `band-${at + 1}`].map((band) =>
            reading.normal.includes(band),
          );
          expect(bandsAt(drawn, point(limit))).toEqual([below && !above ? `band-${at}` : `band-${at + 1}`]);
        }
      }),
    );
  });

  test('a higher value is never in a lower band', () => {
    fc.assert(
      fc.property(cutWithValues, ([drawn, a, b]) => {
        const order = bandsOf(drawn.reading);
        const [low, high] = a.lte(b) ? [a, b] : [b, a];
        const place = (value: Fraction) => order.indexOf(bandsAt(drawn, point(value))[0] ?? '');
        expect(place(low)).toBeLessThanOrEqual(place(high));
      }),
      { numRuns: 1000 },
    );
  });

  test('an untidy value has the bands of both its ends and all between', () => {
    fc.assert(
      fc.property(cutWithValues, ([drawn, a, b]) => {
        const order = bandsOf(drawn.reading);
        const [low, high] = a.lte(b) ? [a, b] : [b, a];
        const [first, last] = [low, high].map((end) => order.indexOf(bandsAt(drawn, point(end))[0] ?? ''));
        const interval = (from: Fraction | null, to: Fraction | null, closed: boolean): Understood => ({
          kind: 'interval',
          from: from && exactOf(from),
          to: to && exactOf(to),
          closed,
          unit: 'V',
        });
        expect(bandsAt(drawn, interval(low, high, true))).toEqual(order.slice(first, (last ?? 0) + 1));
        expect(bandsAt(drawn, interval(low, null, true))).toEqual(order.slice(first));
        expect(bandsAt(drawn, interval(null, high, true))).toEqual(order.slice(0, (last ?? 0) + 1));
        // Just beyond a value: the same bands, but for one that only its own end had.
        const next = drawn.limits.find((limit) => limit.gt(low)) ?? low.add(2);
        expect(bandsAt(drawn, interval(low, null, false))[0]).toBe(
          bandsAt(drawn, point(low.add(next).div(2)))[0],
        );
        const before = drawn.limits.findLast((limit) => limit.lt(high)) ?? high.sub(2);
        expect(bandsAt(drawn, interval(null, high, false)).at(-1)).toBe(
          bandsAt(drawn, point(high.add(before).div(2)))[0],
        );
      }),
      { numRuns: 1000 },
    );
  });

  test('whatever an unknown setting turns out to be, its band was among the possible ones', () => {
    fc.assert(
      fc.property(
        cutWithValues,
        fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
        ([drawn, value], unknown) => {
          const settings = new Map(
            [...drawn.settings].map(([id, known], at) => [id, unknown[at] ? null : known]),
          );
          const { reading } = drawn;
          const possible = judge(
            reading,
            resolveScale(reading, { settings, twins: new Map() }),
            point(value),
          );
          expect(possible).toContain(bandsAt(drawn, point(value))[0]);
          const order = bandsOf(reading);
          const first = order.indexOf(possible[0] ?? '');
          expect(possible).toEqual(order.slice(first, first + possible.length));
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('limits in the wrong order are told, and leave every band possible', () => {
    fc.assert(
      fc.property(cutWithValues, ([drawn, value]) => {
        fc.pre(drawn.limits.length > 1 && drawn.reading.measure.kind === 'quantity');
        const { measure } = drawn.reading;
        if (measure.kind !== 'quantity') return;
        const turned = { ...measure.scale, limits: [...measure.scale.limits].reverse() };
        const reading = { ...drawn.reading, measure: { ...measure, scale: turned } };
        const resolved = resolveScale(reading, { settings: drawn.settings, twins: new Map() });
        expect(resolved.contradiction).not.toBe(null);
        expect(judge(reading, resolved, point(value))).toEqual(bandsOf(reading));
      }),
    );
  });

  const anyText = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc
      .array(
        fc.constantFrom(
          'low',
          'good',
          ' < ',
          '<',
          '5 V',
          '4.75',
          ' ',
          '±',
          '+/-',
          ' .. ',
          '5 %',
          'ppm',
          '≥',
          'at least ',
          'fsb',
          '-',
          '(',
          ')',
          ',',
          '0',
          '°C',
          '=',
          '1e9 V',
        ),
        { maxLength: 14 },
      )
      .map((parts) => parts.join('')),
  );

  test('parseScale() and parseExpect() never throw, and what is wrong lies inside the text', () => {
    const settings = [quantitySetting('fsb', 'V', '0 V')];
    fc.assert(
      fc.property(anyText, fc.constantFrom('V', '%', '°C', 'counts', ''), (text, unit) => {
        for (const parsed of [parseScale(text, unit), parseExpect(text, unit, settings)]) {
          const problems = parsed.ok ? checkScale(parsed.value, unit, settings) : parsed.problems;
          if (!parsed.ok) expect(problems.length).toBeGreaterThan(0);
          for (const { from, to } of problems)
            expect(0 <= from && from <= to && to <= text.length).toBe(true);
          // What passes the checks can be resolved without contradiction at the usual values.
          if (!parsed.ok || problems.length > 0) continue;
          const reading = readingOf({ kind: 'quantity', unit, scale: parsed.value }, ['good']);
          expect(resolveScale(reading, settingsOf({ fsb: '0 V' })).contradiction).toBe(null);
        }
      }),
      { numRuns: 4000 },
    );
  });

  test('parseCodes() never throws; every code is in one band, and rows that overlap are told', () => {
    const key = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 6 }),
      fc.nat({ max: 255 }).map((code) => code.toString(16).padStart(2, '0')),
      fc.tuple(fc.nat({ max: 255 }), fc.nat({ max: 255 })).map((ends) =>
        ends
          .sort((a, b) => a - b)
          .map((code) => code.toString(16).padStart(2, '0'))
          .join('..'),
      ),
    );
    fc.assert(
      fc.property(fc.array(key, { maxLength: 8 }), fc.nat({ max: 255 }), (keys, code) => {
        const { measure, problems } = parseCodes(
          keys.map((text, at) => ({ key: text, band: `b${at}`, means: null })),
        );
        const hex = code.toString(16).padStart(measure.digits, '0').toUpperCase();
        const rows = measure.ranges.filter(
          ({ from, to }) => from.length === hex.length && from <= hex && hex <= to,
        );
        if (rows.length > 1)
          expect(problems.some(({ problem }) => problem.code === 'code-overlap')).toBe(true);
        const seen = observe(readingOf(measure, 'any'), settingsOf({}), hex);
        if (measure.digits >= 2) expect(seen.ok && seen.value.bands).toEqual([rows[0]?.band ?? 'other']);
      }),
      { numRuns: 1000 },
    );
  });

  test('observe() takes or refuses every text for every measure, with something to offer', () => {
    const readings = [
      readingOf(
        { kind: 'options', options: ['steady', 'noisy', 'dual-rail'].map((name) => ({ name, means: null })) },
        ['steady'],
      ),
      readingOf(parseCodes([{ key: '00', band: 'stuck', means: null }]).measure, ['other']),
      readingOf(parseBeeps([{ key: '1-3-3', band: 'memory', means: null }]).measure, ['other']),
      readingOf({ kind: 'tries', enough: 20 }, ['always']),
      ...(
        [
          { kind: 'options', options: ['moves', 'stuck'].map((name) => ({ name, means: null })) },
          parseCodes([{ key: '00', band: 'stuck', means: null }]).measure,
          parseBeeps([{ key: 'none', band: 'silent', means: null }]).measure,
          { kind: 'quantity', unit: 'V', scale: taken(parseScale('good < 5 V < stuck', 'V')) },
        ] as const
      ).map((of) => {
        const single = readingOf(of, ['good']);
        const normal = bandsOf(single).slice(0, 1);
        const bands = eachBands(3, bandsOf(single), normal);
        return readingOf({ kind: 'each', members: ['A0', 'A1', '5'], of, normal, bands }, [allNormal]);
      }),
    ];
    const meter = taken(parseInstrument('meter (meter): 60 V ± (5 % + 2) at 1 V; 1 GHz ± 1 %; 1 MΩ ± 1 %'));
    const equipment: Equipment = { instruments: [meter], lacking: [], rule: 'guarded' };
    const rowText = fc
      .array(
        fc.constantFrom(
          'A0',
          'a1',
          '5',
          'rest',
          'all',
          ' ',
          ', ',
          '; ',
          '-',
          'stuck',
          'moves',
          '4,9',
          '00',
          '1-3-3',
          'L',
          ' 2 ',
          'short',
          ' of ',
          '/',
          'the same',
          'good',
          '\n',
          '=',
        ),
        { maxLength: 12 },
      )
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(
        fc.oneof(anyText, rowText, fc.string({ unit: 'grapheme' })),
        fc.oneof(
          cut.map((drawn) => drawn.reading),
          fc.constantFrom(...readings),
        ),
        fc.constantFrom(noEquipment, equipment),
        (typed, reading, at) => {
          const seen = observe(reading, settingsOf({}), typed, at);
          if (seen.ok) {
            expect(seen.value.typed).toBe(typed);
            expect(seen.value.bands.length).toBeGreaterThan(0);
            for (const band of seen.value.bands) expect(bandsOf(reading)).toContain(band);
          } else {
            expect(seen.refusal.text).not.toBe('');
            for (const offer of seen.refusal.offers)
              expect(observe(reading, settingsOf({}), offer).ok).toBe(true);
            expect(seen.refusal.offers.length).toBeGreaterThan(0);
          }
        },
      ),
      { numRuns: 4000 },
    );
  });
});
