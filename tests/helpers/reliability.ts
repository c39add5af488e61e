import { noEquipment } from '../../engine/doubt/index.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { Observation } from '../../engine/model/observation.ts';
import { propose } from '../../engine/next/index.ts';
import { diceOf } from '../../engine/practice/dice.ts';
import { unlisted } from '../../engine/practice/drill.ts';
import { planDrill } from '../../engine/practice/plan-drill.ts';
import { SimulatedBoard } from '../../engine/practice/simulated-board.ts';
import { bandsOf, deriveObservation, observe } from '../../engine/scale/index.ts';
import { believe } from '../../engine/suspects/believe.ts';
import { inputsOf } from '../../engine/suspects/inputs-of.ts';
import type { Sighting } from '../../engine/suspects/sighting.ts';

/** What was given to hypotheses in one tenth of the shares, and how often they were so. */
export interface Bin {
  readonly from: number;
  count: number;
  given: number;
  true: number;
  /** Σ share · (1 − share): the variance of `true`, were every share exact. */
  variance: number;
}

interface Wish {
  readonly boards: number;
  readonly seed: number;
  /** Every so many boards, the readings are those that are proposed. */
  readonly proposedEvery: number;
  /** Shares as somebody would give them who is too sure: raised to this power. 1 if not given. */
  readonly overSure?: number;
}

const common = { board: 'failing', alsoPresent: [], entry: null } as const;

/** Draws boards of a tree, reads a few things on each, and counts how often the suspects were what their shares said. The board is said
 *  to run now and then, whatever it has: so far as it does, faults that come and go are silent. */
export function reliability(
  tree: CompiledTree,
  { boards, seed, proposedEvery, overSure = 1 }: Wish,
): readonly Bin[] {
  const bins = Array.from(
    { length: 10 },
    (_, at): Bin => ({ from: at / 10, count: 0, given: 0, true: 0, variance: 0 }),
  );
  const taken = tree.readings.filter(({ from, call }) => from === null && !call);
  const telling = tellingIn(tree);
  for (let at = 0; at < boards; at += 1) {
    const plan = planDrill(tree, { seed: seed + at, manner: 'free', unlisted: true });
    const board = new SimulatedBoard(plan, tree, null, noEquipment);
    const dice = diceOf(plan.seed, ['calibration']);
    const many = 1 + dice.below(10);
    const isProposed = at % proposedEvery === 0;
    const seen: Sighting[] = [...givenOf(tree)];
    const observed = new Map<string, Observation>();
    const times = new Map<string, number>();
    for (let step = 0; step < many; step += 1) {
      const best = isProposed ? proposed(tree, seen) : null;
      const reading =
        best ??
        (dice.below(3) === 0 ? dice.of(taken) : dice.weighted(telling, ({ bits }) => bits).check.reading);
      const again = times.get(reading.id) ?? 0;
      times.set(reading.id, again + 1);
      const state = dice.share() < 0.15 ? 'running' : 'failing';
      const isSilent = state === 'running' && board.hidden.fault.comes === 'sometimes';
      const { band, typed } = board.take(reading.id, again, isSilent ? 'running' : 'failing');
      seen.push({ ...common, reading: reading.id, bands: [{ band, share: 1 }], board: state });
      const look = observe(reading, board.present, typed);
      if (look.ok && state === 'failing') observed.set(reading.id, look.value);
    }
    const belief = believe(tree, [...seen, ...computed(tree, board, observed)]);
    const shares = raised(belief.shares, overSure);
    for (const [place, { faults }] of belief.hypotheses.entries()) {
      const share = shares[place] ?? 0;
      const bin = bins[Math.min(9, Math.floor(share * 10))] as Bin;
      bin.count += 1;
      bin.given += share;
      bin.variance += share * (1 - share);
      bin.true += Number((faults[0]?.id ?? unlisted) === board.hidden.fault.id);
    }
  }
  return bins;
}

function raised(shares: readonly number[], power: number): readonly number[] {
  const all = shares.map((share) => share ** power);
  const sum = all.reduce((total, share) => total + share, 0);
  return all.map((share) => share / sum);
}

/** Readings that tell something at the start, with how much. */
const tellingIn = (tree: CompiledTree) =>
  propose(believe(tree, givenOf(tree)), tree, checksOf(tree), { lookAhead: 0 }).ranked;

const givenOf = (tree: CompiledTree): readonly Sighting[] =>
  tree.given.map(({ reading, band }) => ({ ...common, reading, bands: [{ band, share: 1 }] }));

const checksOf = (tree: CompiledTree, seen: readonly Sighting[] = []) =>
  tree.readings
    .filter(({ id, from, call }) => from === null && !call && !seen.some(({ reading }) => reading === id))
    .map((reading) => ({
      reading,
      section: null,
      minutes: reading.minutes,
      wait: reading.wait,
      changes: {},
    }));

function proposed(tree: CompiledTree, seen: readonly Sighting[]) {
  return (
    propose(believe(tree, seen), tree, checksOf(tree, seen), { lookAhead: 0 }).ranked[0]?.check.reading ??
    null
  );
}

function computed(
  tree: CompiledTree,
  board: SimulatedBoard,
  observed: ReadonlyMap<string, Observation>,
): readonly Sighting[] {
  return tree.readings
    .filter((reading) => reading.from !== null && inputsOf(reading, tree).some((id) => observed.has(id)))
    .flatMap((reading) => {
      const { bands } = deriveObservation(reading, board.present, (id) => observed.get(id) ?? null);
      if (bands.length === bandsOf(reading).length) return [];
      return [
        { ...common, reading: reading.id, bands: bands.map((band) => ({ band, share: 1 / bands.length })) },
      ];
    });
}

/** How far the frequency in a bin is from what was given, in standard errors. */
export const errorsOff = ({ given, true: came, variance }: Bin): number =>
  (came - given) / Math.sqrt(Math.max(variance, 1e-9));

export const reliabilityTable = (title: string, bins: readonly Bin[]): string =>
  [
    title,
    '  share given    suspects   mean share   came true   standard errors off',
    ...bins.map((bin) => {
      const of = (value: number): string =>
        bin.count === 0 ? '-' : `${((100 * value) / bin.count).toFixed(2)} %`;
      const range = `${bin.from * 100} .. ${bin.from * 100 + 10} %`.padEnd(14);
      return `  ${range} ${String(bin.count).padStart(8)} ${of(bin.given).padStart(12)} ${of(bin.true).padStart(11)} ${bin.count === 0 ? '' : errorsOff(bin).toFixed(2).padStart(12)}`;
    }),
  ].join('\n');
