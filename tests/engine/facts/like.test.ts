import { describe, expect, test } from 'vitest';
import { factsOf, sharedOf } from './facts-of.ts';

const faults = 'faults:\n  f: { is: f }\n';

const rails = `conditions: { cards: [in, out] }
readings:
  v5:
    is: Five
    unit: V
    expect: 5 V ± 5 %
    needs: { mains: [on] }
    after: [mains]
    only if: { mains: on }
    power: on
    with: meter
    set: 10 V
    points: [a, b]
    minutes: 3
    wait: 5 minutes
    usual: 5.02 V
    source: handbook
  mains: { is: Mains, options: [on, off], normal: on, hidden: off, source: s }
`;

/** The reading `r` beside the rails. */
function like(yaml: string) {
  const found = factsOf(`${rails}  r: { ${yaml} }\n${faults}`);
  return { ...found, r: found.facts.readings.find(({ id }) => id === 'r'), v5: found.facts.readings[0] };
}

describe('a reading that is like another', () => {
  test('takes over every key it does not give', () => {
    const { r, v5, told } = like('like: v5, when: cards out');
    expect(told).toEqual([]);
    expect(r).toEqual({ ...v5, id: 'r', like: 'v5', when: { cards: 'out' } });
  });

  test('gives its own keys the last word', () => {
    const { r, told } = like(
      'like: v5, is: R, needs: [v5], after: [v5], only if: [v5], power: off, with: scope, set: x, points: [c], minutes: 1, wait: 1 h, usual: 4.9 V, source: t',
    );
    expect(told).toEqual([]);
    expect(r).toMatchObject({
      is: 'R',
      needs: [{ reading: 'v5', bands: ['good'] }],
      after: ['v5'],
      onlyIf: [{ reading: 'v5', bands: ['good'] }],
      power: 'off',
      with: ['scope'],
      set: 'x',
      points: ['c'],
      minutes: 1,
      wait: 60,
      usual: { value: '49/10', unit: 'V' },
      source: 't',
    });
  });

  test.each([
    ['other limits in the same unit', 'like: v5, expect: 3.3 V ± 5 %', 'V', ['low', 'good', 'high']],
    ['other bands', 'like: v5, scale: dead < 1 V < good', 'V', ['dead', 'good']],
    ['another unit of the same kind', 'like: v5, unit: mV', 'mV', ['low', 'good', 'high']],
    ['another quantity', 'like: v5, unit: MHz, expect: 5 MHz ± 5 %', 'MHz', ['low', 'good', 'high']],
  ])('may have %s', (_, yaml, unit, bands) => {
    const { r, told } = like(yaml);
    expect(told).toEqual([]);
    expect(r).toMatchObject({ measure: { kind: 'quantity', unit, scale: { bands } }, normal: ['good'] });
  });

  test('may be of another measure, and then says what is normal', () => {
    expect(like('like: v5, options: [none, there], normal: there')).toMatchObject({
      told: [],
      r: { normal: ['there'], measure: { kind: 'options' }, usual: null },
    });
    expect(like('like: v5, options: [none, there]').told).toEqual(['normal-missing: r']);
  });

  test('may make many alike of one, and one of other members', () => {
    const { facts, told } = factsOf(`${rails}  pins: { like: v5, each: [A, B, C] }
  more: { like: pins, each: [D, E] }
  last: { like: more, expect: 3 V ± 5 % }
${faults}`);
    expect(told).toEqual([]);
    const [, , pins, more, last] = facts.readings;
    expect(pins).toMatchObject({
      measure: { kind: 'each', members: ['A', 'B', 'C'] },
      normal: ['all-normal'],
    });
    expect(more).toMatchObject({ measure: { members: ['D', 'E'], of: { unit: 'V' } } });
    expect(last).toMatchObject({ measure: { members: ['D', 'E'], of: { scale: { written: '3 V ± 5 %' } } } });
  });

  test('does not wait for itself where the other one waits for it', () => {
    const { facts, told } = factsOf(`conditions: { cards: [in, out] }
readings:
  v: { is: v, options: [none, good], normal: good, after: [v_bare], only if: [v_bare], source: s }
  v_bare: { like: v, when: cards out }
${faults}`);
    expect(told).toEqual([]);
    expect(facts.readings[1]).toMatchObject({ after: [], onlyIf: [] });
  });

  test('may stand before the other one, in a chain of any length', () => {
    const chain = Array.from({ length: 3000 }, (_, at) => `  r${at}: { like: r${at + 1} }\n`).join('');
    const { facts, told } = factsOf(
      `readings:\n${chain}  r3000: { is: end, options: [a, b], normal: a, source: s }\n${faults}`,
    );
    expect(told).toEqual([]);
    expect(facts.readings).toHaveLength(3001);
    expect(facts.readings[0]).toMatchObject({ id: 'r0', is: 'end', like: 'r1', normal: ['a'] });
  });

  test.each([
    ['like: v6', ['no-reading-named: v6']],
    ['like: r', ['circle: like']],
    ['like: v5, unit: MHz', ['wrong-unit: MHz']],
    ['like: v5, hidden: lo', ['no-band-named: lo']],
    ['like: v5, when: cards', ['when-form: cards']],
    ['like: v5, when: card out', ['no-condition-named: card out']],
    ['like: v5, when: cards ut', ['no-value-named: cards ut']],
    ['like: mains, usual: 5 V', ['usual-not-quantity: 5 V']],
  ])('is told what is wrong: { %s }', (yaml, expected) => {
    expect(like(yaml).told).toEqual(expected);
  });

  test('is not blamed for what is wrong with the other one', () => {
    const { told } = factsOf(`readings:
  a: { is: a, unit: V, expect: 5 V ± 5 Hz, source: s }
  b: { like: a }
  c: { like: b, hidden: lowest }
  d: { is: d, options: [x, none], normal: x, needs: { c: [anything] }, source: s }
${faults}`);
    expect(told).toEqual(['unlike-units: 5 V']);
  });

  test('goes round only once where three are like each other', () => {
    const { told, diagnostics } = factsOf(
      `readings:\n  a: { like: b, is: a, options: [x, y], normal: x, source: s }\n  b: { like: c, is: b, options: [x, y], normal: x, source: s }\n  c: { like: a, is: c, options: [x, y], normal: x, source: s }\n${faults}`,
    );
    expect(told).toEqual(['circle: like']);
    expect(diagnostics[0]).toMatchObject({ names: ['a', 'b', 'c', 'a'] });
  });

  test('takes over from a reading of another file what was compiled there', () => {
    const shared = sharedOf(rails);
    expect(shared.told).toEqual([]);
    const { facts, told } = factsOf(
      `uses: [rails.md]\nreadings:\n  r: { like: v5, when: cards out }\n`,
      undefined,
      shared.facts,
    );
    expect(told).toEqual([]);
    expect(facts.readings.map(({ id }) => id)).toEqual(['v5', 'mains', 'r']);
    expect(facts.readings[2]).toEqual({ ...facts.readings[0], id: 'r', like: 'v5', when: { cards: 'out' } });
  });
});
