import type { ICptWithParentsItem, INetwork, INode } from 'bayesjs';
import type { Fault, Share } from '../../engine/model/fault.ts';
import { usualOdds } from '../../engine/model/odds.ts';
import type { Reading } from '../../engine/model/reading.ts';
import { bandsOf } from '../../engine/scale/index.ts';
import type { BeliefTree } from '../../engine/suspects/believe.ts';
import type { Sighting } from '../../engine/suspects/sighting.ts';

/** A Bayesian network, and what was seen in it. */
export interface NetworkCase {
  readonly network: INetwork;
  readonly given: Record<string, string>;
}

export const cause = 'cause';
export const noneOfThese = 'none of these';

/**
 * One fault at a time as a network, written from the language reference and not from the engine:
 *
 *      cause ──▶ true r0 ──▶ seen 0
 *        │         │
 *        ├──▶ hidden r1 ──▶ true r1 ──▶ seen 1 ──▶ doubt 1
 */
export function asNetwork(tree: BeliefTree, sightings: readonly Sighting[]): NetworkCase {
  const network: INetwork = {};
  const given: Record<string, string> = {};
  const causes = [...tree.faults.map(({ id }) => id), noneOfThese];
  addCause(tree, network, causes);
  for (const reading of tree.readings) addReading(tree, network, reading);
  sightings.forEach((sighting, at) => {
    const seen = `seen ${at}`;
    const reading = tree.readings.find(({ id }) => id === sighting.reading) as Reading;
    addSeen(network, seen, reading, (tree.odds ?? usualOdds).slip);
    const [only] = sighting.bands;
    if (sighting.bands.length === 1 && only !== undefined) given[seen] = only.band;
    else {
      // Virtual evidence (Pearl 1988): a child that says yes as often as the band goes with what was seen.
      add(network, `doubt ${at}`, ['yes', 'no'], [seen], ({ [seen]: band = '' }) => {
        const yes = shareOf(sighting.bands, band);
        return { yes, no: 1 - yes };
      });
      given[`doubt ${at}`] = 'yes';
    }
  });
  return { network, given };
}

function addCause({ faults, odds }: BeliefTree, network: INetwork, causes: readonly string[]): void {
  const { unlisted } = odds ?? usualOdds;
  const total = faults.reduce((sum, { weight }) => sum + weight, 0);
  const prior = faults.map(({ id, weight }) => [id, ((1 - unlisted) * weight) / total] as const);
  network[cause] = {
    id: cause,
    states: [...causes],
    parents: [],
    cpt: Object.fromEntries([...prior, [noneOfThese, unlisted]]),
  };
}

const trueOf = (reading: string): string => `true ${reading}`;
const hiddenOf = (reading: string): string => `hidden ${reading}`;

function addReading(tree: BeliefTree, network: INetwork, reading: Reading): void {
  const all = new Map(tree.readings.map((one) => [one.id, one]));
  const faults = new Map(tree.faults.map((fault) => [fault.id, fault]));
  const needed = reading.needs.flatMap((need) => all.get(need.reading) ?? []);
  const canHide = (one: Reading): readonly string[] => (one.needs.length > 0 ? [hiddenOf(one.id)] : []);
  if (needed.length > 0) {
    const parents = [cause, ...needed.flatMap((one) => [trueOf(one.id), ...canHide(one)])];
    add(network, hiddenOf(reading.id), ['yes', 'no'], parents, (state) => {
      const fault = faults.get(state[cause] ?? '');
      const isHidden =
        fault !== undefined &&
        writtenFor(fault, reading, all) === null &&
        reading.needs.some(({ reading: id, bands }) => {
          const one = all.get(id);
          return one !== undefined && writtenFor(fault, one, all) !== null
            ? !bands.includes(state[trueOf(id)] ?? '')
            : state[hiddenOf(id)] === 'yes';
        });
      return isHidden ? { yes: 1, no: 0 } : { yes: 0, no: 1 };
    });
  }
  const origin = chainOf(reading, all).slice(1);
  add(
    network,
    trueOf(reading.id),
    bandsOf(reading),
    [cause, ...canHide(reading), ...origin.map(({ id }) => trueOf(id))],
    (state) => {
      const fault = faults.get(state[cause] ?? '');
      const shares = fault === undefined ? unlistedIn(tree, reading) : sharesIn(fault, state);
      return Object.fromEntries(bandsOf(reading).map((band) => [band, shareOf(shares, band)]));
    },
  );

  function sharesIn(fault: Fault, state: Readonly<Record<string, string>>): readonly Share[] {
    const written = writtenFor(fault, reading, all);
    if (written === reading) return fault.shows.find((one) => one.reading === reading.id)?.shares ?? [];
    if (written !== null) return [{ band: state[trueOf(written.id)] ?? '', share: 1 }];
    if (state[hiddenOf(reading.id)] === 'yes')
      return even(reading.hidden === null ? bandsOf(reading) : [reading.hidden]);
    return even(fault.rest === 'unknown' || reading.normal === 'any' ? bandsOf(reading) : reading.normal);
  }
}

function addSeen(network: INetwork, id: string, reading: Reading, slip: number): void {
  const bands = bandsOf(reading);
  add(network, id, bands, [trueOf(reading.id)], (state) =>
    Object.fromEntries(
      bands.map((band) => [band, (band === state[trueOf(reading.id)] ? 1 - slip : 0) + slip / bands.length]),
    ),
  );
}

/** The reading and those it is like, nearest first. */
function chainOf(reading: Reading, all: ReadonlyMap<string, Reading>): readonly Reading[] {
  const like = all.get(reading.like ?? '');
  return like === undefined ? [reading] : [reading, ...chainOf(like, all)];
}

const writtenFor = ({ shows }: Fault, reading: Reading, all: ReadonlyMap<string, Reading>): Reading | null =>
  chainOf(reading, all).find(({ id }) => shows.some((one) => one.reading === id)) ?? null;

function unlistedIn({ odds }: BeliefTree, reading: Reading): readonly Share[] {
  const { unlistedNormal } = odds ?? usualOdds;
  const bands = bandsOf(reading);
  const { normal } = reading;
  if (normal === 'any' || normal.length === bands.length) return even(bands);
  return bands.map((band) => ({
    band,
    share: normal.includes(band)
      ? unlistedNormal / normal.length
      : (1 - unlistedNormal) / (bands.length - normal.length),
  }));
}

const even = (bands: readonly string[]): readonly Share[] =>
  bands.map((band) => ({ band, share: 1 / bands.length }));

const shareOf = (shares: readonly Share[], band: string): number =>
  shares.reduce((sum, one) => (one.band === band ? sum + one.share : sum), 0);

type States = Readonly<Record<string, string>>;

/** Adds a node with its whole table. */
function add(
  network: INetwork,
  id: string,
  states: readonly string[],
  parents: readonly string[],
  row: (state: States) => Record<string, number>,
): void {
  let rows: readonly States[] = [{}];
  for (const parent of parents) {
    const own = (network[parent] as INode).states;
    rows = rows.flatMap((state) => own.map((value) => ({ ...state, [parent]: value })));
  }
  // biome-ignore lint/suspicious/noThenProperty: the library calls it so
  const cpt = rows.map((when): ICptWithParentsItem => ({ when, then: row(when) }));
  network[id] = { id, states: [...states], parents: [...parents], cpt };
}
