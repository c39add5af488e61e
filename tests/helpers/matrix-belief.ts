import type { Reading } from '../../engine/model/reading.ts';
import type { Check } from '../../engine/next/index.ts';
import type { Belief } from '../../engine/suspects/belief.ts';
import { plainReading } from './plain-reading.ts';
import { faultOf } from './suspect-models.ts';

/** What may be wrong and what each test shows of it, without any slip: `shows[h][t]` is a digit for the band. */
export interface Matrix {
  readonly priors: readonly number[];
  readonly shows: readonly string[];
  /** One of each test; 1 if not given. */
  readonly minutes?: readonly number[];
}

/** The belief after some tests came out, by number of the test: `{ 0: 1 }`. */
export function matrixBelief({ priors, shows }: Matrix, seen: Readonly<Record<number, number>> = {}): Belief {
  const fits = priors.map((prior, h) =>
    Object.entries(seen).every(([test, band]) => shows[h]?.[Number(test)] === String(band)) ? prior : 0,
  );
  const all = fits.reduce((sum, share) => sum + share, 0);
  return {
    hypotheses: priors.map((prior, h) => ({ faults: [faultOf(`s${h}`, {}, { weight: prior })] })),
    shares: fits.map((share) => share / all),
    predict: (h, reading) =>
      bandNames.map((_, band) => (shows[h]?.[Number(reading.slice(1)) - 1] === String(band) ? 1 : 0)),
  };
}

const bandNames = ['0', '1'];

/** The tests of a matrix as checks `t1`, `t2`, …. */
export const matrixChecks = ({ shows, minutes }: Matrix): readonly Check[] =>
  [...(shows[0] ?? '')].map((_, test) => ({
    reading: matrixReading(`t${test + 1}`),
    section: null,
    minutes: minutes?.[test] ?? 1,
    wait: 0,
    changes: {},
  }));

const matrixReading = (id: string): Reading =>
  plainReading(id, { kind: 'options', options: bandNames.map((name) => ({ name, means: null })) }, ['0']);

/** Expected minutes until one state is left, when `choose` says which test comes next; exact. */
export function expectedMinutes(
  matrix: Matrix,
  choose: (belief: Belief, checks: readonly Check[]) => Check,
): number {
  const checks = matrixChecks(matrix);
  const from = (seen: Readonly<Record<number, number>>): number => {
    const belief = matrixBelief(matrix, seen);
    const left = belief.shares.flatMap((share, h) => (share > 0 ? [h] : []));
    if (left.length < 2) return 0;
    const { reading, minutes } = choose(belief, checks);
    const test = Number(reading.id.slice(1)) - 1;
    return bandNames.reduce((sum, _, band) => {
      const share = left
        .filter((h) => matrix.shows[h]?.[test] === String(band))
        .reduce((part, h) => part + (belief.shares[h] ?? 0), 0);
      return share > 0 ? sum + share * from({ ...seen, [test]: band }) : sum;
    }, minutes);
  };
  return from({});
}

/** Stages in a row, each as likely to be the bad one: test i tells whether the signal is still good behind stage i. */
export const equalStages = (n: number): Matrix => ({
  priors: Array.from({ length: n }, () => 1 / n),
  shows: Array.from({ length: n }, (_, bad) =>
    Array.from({ length: n - 1 }, (_stage, test) => (test >= bad ? '1' : '0')).join(''),
  ),
});
