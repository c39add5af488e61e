import { describe, expect, test } from 'vitest';
import type { Belief } from '../../engine/suspects/belief.ts';
import { type BeliefTree, believe } from '../../engine/suspects/believe.ts';
import { faultOf, readingOf, sightingOf } from '../helpers/suspect-models.ts';

/** No slips, and no board but those that are listed. */
const certain = { slip: 0, unlisted: 0, unlistedNormal: 1 };

const shareOf = ({ hypotheses, shares }: Belief, ...faults: readonly string[]): number =>
  shares[placeOf({ hypotheses }, faults)] ?? Number.NaN;

const placeOf = ({ hypotheses }: Pick<Belief, 'hypotheses'>, faults: readonly string[]): number =>
  hypotheses.findIndex((one) => one.faults.map(({ id }) => id).join() === faults.join());

describe('a lung disease, a cold, a cough and a fever', () => {
  // P(LD) = .1, P(C) = .3; P(cough | LD, C) = .80, LD alone .75, C alone .30, neither .05; P(fever | C) = .65, else .25.
  // found: https://courses.learntosolveit.com/gatech/cs6601/lesson_6_challenge_4.html ("≈ 0.405", "≈ 0.322"); fractions computed.
  // Two faults at once would show the cough with 1 − .25 · .70 = .825 by our rule, so that "both" and "neither" are faults
  // of their own here, by the product of the priors.
  const fever = { with: 'yes 0.65, no 0.35', without: 'yes 0.25, no 0.75' };
  const tree: BeliefTree = {
    readings: [readingOf('cough', '*no yes'), readingOf('fever', '*no yes')],
    faults: [
      faultOf('both', { cough: 'yes 0.8, no 0.2', fever: fever.with }, { weight: 3 }),
      faultOf('disease', { cough: 'yes 0.75, no 0.25', fever: fever.without }, { weight: 7 }),
      faultOf('cold', { cough: 'yes 0.3, no 0.7', fever: fever.with }, { weight: 27 }),
      faultOf('neither', { cough: 'yes 0.05, no 0.95', fever: fever.without }, { weight: 63 }),
    ],
    odds: certain,
  };
  const disease = (...seen: readonly string[]): number => {
    const belief = believe(
      tree,
      seen.map((reading) => sightingOf(reading, 'yes')),
    );
    return shareOf(belief, 'both') + shareOf(belief, 'disease');
  };

  test('P(disease | cough) = .0765 / .189 = .4048', () => {
    expect(disease('cough')).toBeCloseTo(0.0765 / 0.189, 12);
    expect(disease('cough').toFixed(4)).toBe('0.4048');
  });

  test('P(disease | cough, fever) = .028725 / .08925 = .3218', () => {
    expect(disease('cough', 'fever')).toBeCloseTo(0.028725 / 0.08925, 12);
    expect(disease('cough', 'fever').toFixed(4)).toBe('0.3218');
  });
});

/** Causes that each show one effect in so many of the cases. */
const effects = (shares: Readonly<Record<string, number>>): BeliefTree => ({
  readings: [readingOf('effect', '*no yes')],
  faults: Object.entries(shares).map(([id, share]) =>
    faultOf(id, { effect: `yes ${share}, no ${1 - share}` }),
  ),
  odds: { slip: 0, unlisted: 0.1, unlistedNormal: 1 },
});

/** How likely the effect is under the causes given, one or two; nobody: none of these. */
function likely(tree: BeliefTree, ...causes: readonly string[]): number {
  const belief = believe(tree, [], { pairs: true });
  return belief.predict(placeOf(belief, causes), 'effect')[1] ?? Number.NaN;
}

/** The same under three: one of them has been mended since, which is how a third cause comes in. */
function likelyUnderThree(tree: BeliefTree, first: string, second: string, third: string): number {
  const options = { pairs: true, aside: new Set([third]) };
  const before = believe(tree, [], options);
  const then = believe(tree, [sightingOf('effect', 'yes', { alsoPresent: [third] })], options);
  // Odds of both against the first alone, which shows the effect together with the third.
  const factor =
    shareOf(then, first, second) /
    shareOf(then, first) /
    (shareOf(before, first, second) / shareOf(before, first));
  const alone = [first, third].sort((a, b) => order(tree, a) - order(tree, b));
  return factor * likely(tree, ...alone);
}

const order = ({ faults }: BeliefTree, id: string): number => faults.findIndex((fault) => fault.id === id);

describe('several causes of one effect, each of which can fail by itself (noisy-or)', () => {
  // Fever is held back with q = .6 by a cold, .2 by flu, .1 by malaria.
  // found: https://www.sambuz.com/doc/outline-pdf-document-763250 ("0.988 0.012 = 0.6 × 0.2 × 0.1"); recomputed.
  // Two faults at once follow the same rule, because the one out of normal is seen.
  test('a cold, flu and malaria: 0, .9, .8, .98, .4, .94, .88, .988', () => {
    const tree = effects({ cold: 0.4, flu: 0.8, malaria: 0.9 });
    expect(likely(tree)).toBe(0);
    expect(likely(tree, 'malaria')).toBeCloseTo(0.9, 12);
    expect(likely(tree, 'flu')).toBeCloseTo(0.8, 12);
    expect(likely(tree, 'flu', 'malaria')).toBeCloseTo(0.98, 12);
    expect(likely(tree, 'cold')).toBeCloseTo(0.4, 12);
    expect(likely(tree, 'cold', 'malaria')).toBeCloseTo(0.94, 12);
    expect(likely(tree, 'cold', 'flu')).toBeCloseTo(0.88, 12);
    expect(likelyUnderThree(tree, 'cold', 'flu', 'malaria')).toBeCloseTo(0.988, 12);
  });

  // found: https://cognitivescience.vercel.app/cognitive-science/sheets/random-sheet/ ; 1 − (5/6)(2/3) = 4/9 and so on, recomputed.
  test('causes of 1/6, 1/3 and 7/10: pairs 4/9, 3/4, 4/5, all 5/6', () => {
    const tree = effects({ a: 1 / 6, b: 1 / 3, c: 7 / 10 });
    expect(likely(tree, 'a', 'b')).toBeCloseTo(4 / 9, 12);
    expect(likely(tree, 'a', 'c')).toBeCloseTo(3 / 4, 12);
    expect(likely(tree, 'b', 'c')).toBeCloseTo(4 / 5, 12);
    expect(likelyUnderThree(tree, 'a', 'b', 'c')).toBeCloseTo(5 / 6, 12);
  });
});
