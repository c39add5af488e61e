import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cycleThrough } from '../../../engine/foreign/cycle-through.ts';
import { joinForeign } from '../../../engine/foreign/join-foreign.ts';
import { KeptTexts } from '../../../engine/foreign/kept-texts.ts';
import { noForeignFacts } from '../../../engine/model/foreign-facts.ts';
import { plainReading } from '../../helpers/plain-reading.ts';

const span = { from: 0, to: 0 };
const v5 = plainReading('v5', { kind: 'options', options: [{ name: 'good', means: null }] }, ['good']);

describe('cycleThrough()', () => {
  test('gives the shortest way back, both ends included', () => {
    const ways: Readonly<Record<string, readonly string[]>> = { a: ['b'], b: ['c', 'd'], c: ['d'], d: ['a'] };
    expect(cycleThrough('a', 'b', (at) => ways[at] ?? [])).toEqual(['a', 'b', 'd', 'a']);
    expect(cycleThrough('a', 'a', () => [])).toEqual(['a', 'a']);
    expect(cycleThrough('a', 'b', () => [])).toBeNull();
  });

  test('finds a way exactly where one exists', () => {
    const names = ['a', 'b', 'c', 'd', 'e'];
    const arcs = fc.dictionary(fc.constantFrom(...names), fc.subarray(names));
    fc.assert(
      fc.property(arcs, (ways) => {
        const next = (at: string): readonly string[] => ways[at] ?? [];
        const reached = new Set(['b']);
        for (const at of reached) for (const to of next(at)) reached.add(to);
        const found = cycleThrough('a', 'b', next);
        expect(found !== null).toBe(reached.has('a'));
        for (const [index, at] of (found ?? []).slice(1, -1).entries())
          expect(next(at)).toContain(found?.[index + 2]);
      }),
    );
  });
});

describe('joinForeign()', () => {
  const gift = (from: string, reading = v5) => ({
    facts: { ...noForeignFacts, readings: [reading] },
    from,
    span,
  });

  test('takes what two files say alike once', () => {
    const { value, diagnostics } = joinForeign([gift('a.md'), gift('b.md', structuredClone(v5))]);
    expect(value.readings).toEqual([v5]);
    expect(diagnostics).toEqual([]);
  });

  test('tells what two files mean differently, and keeps the first', () => {
    const { value, diagnostics } = joinForeign([gift('a.md'), gift('b.md', { ...v5, is: 'another' })]);
    expect(value.readings).toEqual([v5]);
    expect(diagnostics).toEqual([
      { code: 'declared-elsewhere', name: 'v5', first: 'a.md', second: 'b.md', span },
    ]);
  });
});

describe('KeptTexts', () => {
  const rounds = (...texts: readonly string[]): readonly string[] => {
    const made: string[] = [];
    const kept = new KeptTexts((text) => {
      made.push(text);
      return text.toUpperCase();
    });
    for (const round of texts) {
      kept.turn();
      for (const text of round) expect(kept.of(text)).toBe(text.toUpperCase());
      made.push('|');
    }
    return made.join('').split('|').slice(0, -1);
  };

  test('makes only the text that is another', () => {
    expect(rounds('abcd', 'abxd', 'abxd', 'abxyd', 'abyd')).toEqual(['abcd', 'x', '', 'y', '']);
  });

  test('finds the rest again behind many that were taken away or put in; one of them may be made again', () => {
    expect(rounds('abcdefgh', 'afgh')).toEqual(['abcdefgh', 'f']);
    expect(rounds('afgh', 'axyzfgh')).toEqual(['afgh', 'xyz']);
  });

  test('forgets what a whole round did not ask for', () => {
    expect(rounds('ab', 'a', 'ab')).toEqual(['ab', '', 'b']);
  });

  test('gives what was made of each text, whatever the rounds', () => {
    const round = fc.string({ unit: fc.constantFrom('a', 'b', 'c', 'd', 'e'), maxLength: 8 });
    fc.assert(fc.property(fc.array(round), (texts) => void rounds(...texts)));
  });
});
