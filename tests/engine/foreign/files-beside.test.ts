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
  test('makes a text again only once a whole round has passed without it', () => {
    const made: string[] = [];
    const kept = new KeptTexts((text) => made.push(text));
    kept.of('a');
    kept.of('a');
    kept.turn();
    kept.of('a');
    kept.turn();
    kept.turn();
    kept.of('a');
    expect(made).toEqual(['a', 'a']);
  });
});
