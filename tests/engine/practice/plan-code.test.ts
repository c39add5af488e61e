import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hiddenIn } from '../../../engine/practice/hidden-in.ts';
import {
  codeOfPlan,
  type DrillPlan,
  misfitOf,
  planDrill,
  planOfCode,
} from '../../../engine/practice/index.ts';
import { benchTree } from '../../helpers/bench.ts';

const plans: fc.Arbitrary<DrillPlan> = fc.record({
  tree: fc.constantFrom('memory', 'no-post-586', 'a'),
  digest: fc.stringMatching(/^[0-9a-f]{5}$/),
  seed: fc.integer({ min: 0, max: 2 ** 32 - 1 }),
  manner: fc.constantFrom('free', 'guided'),
  unlisted: fc.boolean(),
  boardClass: fc.option(fc.integer({ min: 0, max: 13 })),
  chosen: fc.boolean(),
  lacking: fc
    .uniqueArray(fc.integer({ min: 0, max: 40 }), { maxLength: 4 })
    .map((tools) => tools.toSorted((a, b) => a - b)),
});

const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const lettersOf = (code: string): string => code.split(':')[1]?.replaceAll('-', '') ?? '';

describe('codes of drills', () => {
  test('read back what they were made from, in small letters, with letters that are taken for digits, and without joints', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const code = codeOfPlan(plan);
        const [tree = '', letters = ''] = code.split(':');
        const heard = `${tree}: ${letters.toLowerCase().replaceAll('-', ' ').replaceAll('0', 'o').replaceAll('1', 'l')}`;
        for (const typed of [code, heard, `${tree} ${letters}`]) {
          expect(planOfCode(typed)).toEqual({ ok: true, value: plan });
        }
      }),
    );
  });

  test('tell which letter is mistyped, and what was meant', () => {
    fc.assert(
      fc.property(plans, fc.nat(), fc.integer({ min: 1, max: 31 }), (plan, place, other) => {
        const code = codeOfPlan(plan);
        const letters = lettersOf(code);
        const at = place % letters.length;
        const wrong = alphabet[(alphabet.indexOf(letters[at] ?? '') + other) % 32] ?? '';
        const read = planOfCode(`${plan.tree}:${letters.slice(0, at)}${wrong}${letters.slice(at + 1)}`);
        expect(read.ok).toBe(false);
        if (!read.ok) {
          expect(read.problem).toContain(`"${wrong}" at place ${at + 1}`);
          expect(read.problem).toContain(`did you mean ${code}?`);
        }
      }),
    );
  });

  test('notice two letters that changed places', () => {
    fc.assert(
      fc.property(plans, fc.nat(), (plan, place) => {
        const letters = lettersOf(codeOfPlan(plan));
        const at = place % (letters.length - 1);
        const [a = '', b = ''] = letters.slice(at, at + 2);
        fc.pre(a !== b);
        expect(planOfCode(`${plan.tree}:${letters.slice(0, at)}${b}${a}${letters.slice(at + 2)}`).ok).toBe(
          false,
        );
      }),
    );
  });

  test.each([
    ['', 'begins with the name of a tree'],
    ['memory', 'begins with the name of a tree'],
    ['memory:03YDG', 'Letters are missing: there are 5 behind the colon, and a code has at least 14'],
    ['memory:03YDG-8000U-0282', '"U" stands at place 10'],
    [`memory:${'0'.repeat(40)}`, '40 letters behind the colon are too many'],
  ])('say in words what is wrong with "%s"', (code, words) => {
    const read = planOfCode(code);
    expect(read.ok ? '' : read.problem).toContain(words);
  });

  test('never throw, whatever is typed', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme' }), (text) => void planOfCode(text)));
    fc.assert(fc.property(fc.stringMatching(/^a:[0-9A-Za-z-]{0,40}$/), (text) => void planOfCode(text)));
  });

  test('are for one version of one tree', () => {
    const tree = benchTree();
    const plan = planDrill(tree, { seed: 1, manner: 'free' });
    expect(misfitOf(plan, tree)).toBeNull();
    expect(misfitOf(plan, { ...tree, id: 'other' })).toMatch(/for the tree "bench-tree", not for "other"/);
    expect(misfitOf(plan, { ...tree, digest: 'x' })).toMatch(/another version/);
  });

  test('can be made for a fault of the trainer’s choice', () => {
    const small = benchTree();
    const faults = small.faults.map((fault, at) => ({ ...fault, weight: at === 0 ? 1e-6 : fault.weight }));
    const tree = { ...small, faults, odds: { slip: 0, unlisted: 0, unlistedNormal: 0.8 } };
    for (const id of [...tree.faults.map((fault) => fault.id), 'unlisted']) {
      const plan = planDrill(tree, { seed: 77, manner: 'guided', fault: id });
      expect(planDrill(tree, { seed: 77, manner: 'guided', fault: id })).toEqual(plan);
      expect(planOfCode(codeOfPlan(plan))).toEqual({ ok: true, value: plan });
      expect(hiddenIn(plan, tree).fault.id).toBe(id);
    }
  });
});
