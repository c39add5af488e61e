import { describe, expect, test } from 'vitest';
import type { Fault, Shows } from '../../../engine/model/fault.ts';
import type { Formula } from '../../../engine/model/formula.ts';
import type { Need, Reading, Scale } from '../../../engine/model/reading.ts';
import { shownBands } from '../../../engine/suspects/shown-bands.ts';
import { healthy } from '../../../engine/suspects/unlisted-fault.ts';
import { plainReading } from '../../helpers/plain-reading.ts';

/** A reading in short: bands, `*` before the normal ones, `?` before all where nothing is judged; then what it needs. */
function reading(
  id: string,
  bands: string,
  needs: Record<string, string> = {},
  hidden: string | null = 'none',
): Reading {
  const names = bands.split(' ');
  const plain = names.map((name) => name.replace(/^[*?]/, ''));
  const needed: readonly Need[] = Object.entries(needs).map(([of, allowed]) => ({
    reading: of,
    bands: allowed.split(' '),
  }));
  return {
    ...plainReading(
      id,
      { kind: 'options', options: plain.map((name) => ({ name, means: null })) },
      bands.startsWith('?')
        ? 'any'
        : names.filter((name) => name.startsWith('*')).map((name) => name.slice(1)),
    ),
    needs: needed,
    hidden: needed.length > 0 ? hidden : null,
  };
}

/** `low` or `low 0.7, none 0.3` for each reading. */
function fault(shows: Record<string, string>, rest: Fault['rest'] = 'normal'): Fault {
  const rows: readonly Shows[] = Object.entries(shows).map(([of, text]) => ({
    reading: of,
    shares: text.split(', ').map((part) => {
      const [band = '', share = '1'] = part.split(' ');
      return { band, share: Number(share) };
    }),
  }));
  return {
    ...healthy,
    id: 'f',
    is: 'f',
    weight: 1,
    shows: rows,
    rest,
  };
}

/** What is shown in `of`: how, and the shares in per cent. */
function shown(readings: readonly Reading[], one: Fault, of: string): string {
  const found = shownBands({ readings, faults: [one] }, one).get(of);
  const shares = found?.shares.map(({ band, share }) => `${band} ${Number((share * 100).toFixed(6))}`);
  return `${found?.how}: ${shares?.join(', ')}`;
}

const v5 = reading('v5', 'none low *good high');
const clk = reading('clk', 'none slow *good', { v5: 'good' });
const code = reading('code', 'none early *late', { clk: 'good slow' });

describe('shownBands()', () => {
  test('takes what is written', () => {
    expect(shown([v5], fault({ v5: 'low 0.7, none 0.3' }), 'v5')).toBe('written: low 70, none 30');
  });

  test('is normal where nothing is written, in equal shares', () => {
    expect(shown([reading('a', '*x *y z')], fault({}), 'a')).toBe('normal: x 50, y 50');
  });

  test('hides what needs something broken, through all that lies between', () => {
    expect(shown([v5, clk, code], fault({ v5: 'low' }), 'clk')).toBe('hidden: none 100');
    expect(shown([v5, clk, code], fault({ v5: 'low' }), 'code')).toBe('hidden: none 100');
  });

  test('leaves open what is broken within the bands that suffice', () => {
    expect(shown([v5, clk, code], fault({ clk: 'slow' }), 'code')).toBe('normal: late 100');
    expect(shown([v5, clk, code], fault({ clk: 'none' }), 'code')).toBe('hidden: none 100');
  });

  test('lets what is written win, and ends the chain there', () => {
    expect(shown([v5, clk, code], fault({ v5: 'low', clk: 'good' }), 'code')).toBe('normal: late 100');
    expect(shown([v5, clk, code], fault({ v5: 'low', code: 'early' }), 'code')).toBe('written: early 100');
  });

  test('hides in a share of the cases, once however many ways lead there', () => {
    const both = reading('both', 'none *on', { v5: 'good', clk: 'good' });
    const half = fault({ v5: 'low 0.7, good 0.3' });
    expect(shown([v5, clk, both], half, 'clk')).toBe('hidden: none 70, good 30');
    expect(shown([v5, clk, both], half, 'both')).toBe('hidden: none 70, on 30');
  });

  test('multiplies the shares of needs that break apart from each other', () => {
    const v3 = reading('v3', 'low *good');
    const both = reading('both', 'none *on', { v5: 'good', v3: 'good' });
    expect(shown([v5, v3, both], fault({ v5: 'low 0.5, good 0.5', v3: 'low 0.5, good 0.5' }), 'both')).toBe(
      'hidden: none 75, on 25',
    );
  });

  test('asks each need of a reading by its own bands', () => {
    const strict = reading('strict', 'none *on', { v5: 'good', clk: 'good' });
    const lax = { ...clk, needs: [{ reading: 'v5', bands: ['good', 'high'] }] };
    expect(shown([v5, lax, strict], fault({ v5: 'high' }), 'clk')).toBe('normal: good 100');
    expect(shown([v5, lax, strict], fault({ v5: 'high' }), 'strict')).toBe('hidden: none 100');
  });

  test('adds the hidden share to the band itself where the open reading shows it too', () => {
    const lamp = reading('lamp', '*dark *lit', { v5: 'good' }, 'dark');
    expect(shown([v5, lamp], fault({ v5: 'low 0.5, good 0.5' }), 'lamp')).toBe('hidden: dark 75, lit 25');
  });

  test('knows nothing where the fault does not, and says nothing where nothing is judged', () => {
    const asked = reading('asked', '?yes no');
    expect(shown([v5], fault({}, 'unknown'), 'v5')).toBe('unknown: none 25, low 25, good 25, high 25');
    expect(shown([asked], fault({}), 'asked')).toBe('free: yes 50, no 50');
    expect(shown([v5, clk], fault({ v5: 'low' }, 'unknown'), 'clk')).toBe('hidden: none 100');
  });

  test('hides what a healthy board hides as well', () => {
    const beeps = reading('beeps', '*silent some');
    const pattern = reading('pattern', 'none *long', { beeps: 'some' });
    expect(shown([beeps, pattern], fault({}), 'pattern')).toBe('hidden: none 100');
    expect(shown([beeps, pattern], fault({ beeps: 'some' }), 'pattern')).toBe('normal: long 100');
  });

  test('comes to an end where needs go round in a circle', () => {
    const a = reading('a', 'none *good', { b: 'good' });
    const b = reading('b', 'none *good', { a: 'good' });
    expect(shown([a, b], fault({}), 'a')).toBe('normal: good 100');
    expect(shown([a, b], fault({ b: 'none' }), 'a')).toBe('hidden: none 100');
  });

  test('gives shares that add up to 1 for every reading', () => {
    for (const one of [
      fault({}),
      fault({ v5: 'low 0.1, high 0.2, good 0.7' }),
      fault({ clk: 'none' }, 'unknown'),
    ]) {
      for (const { shares } of shownBands({ readings: [v5, clk, code], faults: [one] }, one).values()) {
        expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      }
    }
  });

  test('shows for a reading like another what is written for that one, unless something is written for itself', () => {
    const bare = { ...reading('bare', 'none low *good high'), like: 'v5' };
    const far = { ...reading('far', 'none low *good high'), like: 'bare' };
    const other = { ...reading('other', 'off *on'), like: 'v5' };
    const readings = [v5, bare, far, other];
    expect(shown(readings, fault({ v5: 'low' }), 'far')).toBe('written: low 100');
    expect(shown(readings, fault({ v5: 'low', bare: 'good' }), 'far')).toBe('written: good 100');
    expect(shown(readings, fault({ v5: 'low' }), 'other')).toBe('normal: on 100');
    expect(shown(readings, fault({}), 'bare')).toBe('normal: good 100');
  });

  test('hides what needs a reading that is like a broken one', () => {
    const bare = { ...reading('bare', 'none low *good high'), like: 'v5' };
    const lamp = reading('lamp', 'none *lit', { bare: 'good' });
    expect(shown([v5, bare, lamp], fault({ v5: 'low 0.7, good 0.3' }), 'lamp')).toBe(
      'hidden: none 70, lit 30',
    );
  });

  test('leaves open how a call ends that the fault does not mention', () => {
    const call = { ...reading('find-the-short', '?found not-found'), call: true };
    expect(shown([call], fault({}), 'find-the-short')).toBe('free: found 50, not-found 50');
    expect(shown([call], fault({ 'find-the-short': 'found' }), 'find-the-short')).toBe('written: found 100');
  });

  describe('of a computed reading', () => {
    const clocks = [clock('cpu_clk'), clock('pci_clk')];
    const ratio = (id: string): Formula => ({
      kind: 'binary',
      operator: '/',
      left: name(id),
      right: hertz('40'),
    });
    const factor: Reading = {
      ...plainReading(
        'factor',
        { kind: 'quantity', unit: '', scale: scale(['low', 'good', 'high'], [one('9/10'), one('11/10')]) },
        ['good'],
      ),
      from: { kind: 'call', name: 'min', arguments: [ratio('cpu_clk'), ratio('pci_clk')] },
    };

    test('are those that its inputs allow, and none the author need write', () => {
      expect(shown([...clocks, factor], fault({}), 'factor')).toBe('derived: good 100');
      expect(shown([...clocks, factor], fault({ cpu_clk: 'slow' }), 'factor')).toBe('derived: low 100');
      expect(shown([...clocks, factor], fault({ cpu_clk: 'slow 0.25, good 0.75' }), 'factor')).toBe(
        'derived: low 25, good 75',
      );
    });

    test('are what is written as far as the inputs allow it', () => {
      expect(shown([...clocks, factor], fault({ factor: 'low 0.5, good 0.5' }), 'factor')).toBe(
        'written: good 100',
      );
      expect(shown([...clocks, factor], fault({ factor: 'high' }), 'factor')).toBe('written: high 100');
    });
  });
});

const name = (id: string): Formula => ({ kind: 'name', name: id });
const hertz = (value: string): Formula => ({ kind: 'quantity', value: `${value}000000`, unit: 'MHz' });
const one = (value: string): Formula => ({ kind: 'quantity', value, unit: '' });
const scale = (bands: readonly string[], limits: readonly Formula[]): Scale => ({
  written: '',
  bands,
  limits,
  byMagnitude: false,
  nominal: null,
});

/** 36 MHz to 44 MHz is normal: from 0.9 to 1.1 of 40 MHz. */
function clock(id: string): Reading {
  const limits = [hertz('36'), hertz('44')];
  return plainReading(id, { kind: 'quantity', unit: 'MHz', scale: scale(['slow', 'good', 'fast'], limits) }, [
    'good',
  ]);
}
