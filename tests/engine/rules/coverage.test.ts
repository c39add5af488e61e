import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkRules } from '../../../engine/rules/index.ts';
import { linkedTree } from '../../helpers/small-tree.ts';

const bandsOf: Readonly<Record<string, readonly string[]>> = {
  a: ['low', 'good', 'high'],
  b: ['none', 'weak', 'good', 'strong'],
  c: ['yes', 'no'],
  cpu: ['single', 'dual'],
};
const names = Object.keys(bandsOf);

type Line = readonly { readonly name: string; readonly not: boolean; readonly bands: readonly string[] }[];

const clause = fc.constantFrom(...names).chain((name) =>
  fc.record({
    name: fc.constant(name),
    not: fc.boolean(),
    bands: fc.subarray([...(bandsOf[name] ?? [])], {
      minLength: 1,
      maxLength: (bandsOf[name] ?? []).length - 1,
    }),
  }),
);
const line: fc.Arbitrary<Line> = fc.uniqueArray(clause, {
  minLength: 1,
  maxLength: 3,
  selector: ({ name }) => name,
});
const lines = fc.array(line, { minLength: 1, maxLength: 6 });

/** Every combination of bands, one by one. */
const combinations = names.reduce<Record<string, string>[]>(
  (all, name) => all.flatMap((one) => (bandsOf[name] ?? []).map((band) => ({ ...one, [name]: band }))),
  [{}],
);

const fits = (each: Line, combination: Record<string, string>): boolean =>
  each.every(({ name, not, bands }) => bands.includes(combination[name] ?? '') !== not);

const written = (each: Line): string =>
  each.map(({ name, not, bands }) => `${name} is ${not ? 'not ' : ''}${bands.join(' or ')}`).join(' and ');

function found(check: readonly Line[]) {
  const outcomes = check.map((each) => `- ${written(each)} → [B](#b)`).join('\n');
  const { tree, diagnostics } = linkedTree(
    {
      readings: { a: 'low *good high', b: 'none weak *good strong', c: '*yes no' },
      settings: { cpu: 'single dual' },
    },
    `## A\n\nRead \`a\`, \`b\`, \`c\`.\n\n${outcomes}\n\n## B\n\nStop: b.\n`,
  );
  expect(diagnostics).toEqual([]);
  return checkRules(tree);
}

describe('the coverage of a check', () => {
  test('is what looking at every combination one by one gives', () => {
    fc.assert(
      fc.property(lines, (check) => {
        const asked = new Set(check.flatMap((each) => each.map(({ name }) => name)));
        const matter = combinations.filter((one) => asked.has('cpu') || one.cpu === 'single');
        const left = matter.filter((one) => !check.some((each) => fits(each, one)));
        const dead = check.filter(
          (each, index) =>
            !matter.some((one) => check.findIndex((other) => fits(other, one)) === index && fits(each, one)),
        );
        const problems = found(check);
        const [uncovered] = problems.filter(({ code }) => code === 'uncovered-combination');
        expect(
          problems.flatMap((each) => (each.code === 'outcome-never-matches' ? [each.written] : [])),
        ).toEqual(dead.map(written));
        expect(uncovered?.code === 'uncovered-combination' ? uncovered.combinations : 0).toBe(left.length);
        if (uncovered?.code === 'uncovered-combination') {
          const example = Object.fromEntries(uncovered.example.map(({ name, band }) => [name, band]));
          const meant = matter.filter((one) =>
            Object.entries(example).every(([name, band]) => one[name] === band),
          );
          expect(meant.length).toBeGreaterThan(0);
          expect(meant.every((one) => left.includes(one))).toBe(true);
        }
      }),
      { numRuns: 400 },
    );
  });
});
