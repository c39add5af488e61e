import bayesjs from 'bayesjs';
import { after } from '../../engine/suspects/after.ts';
import { believe } from '../../engine/suspects/believe.ts';
import type { Sighting } from '../../engine/suspects/sighting.ts';
import { asNetwork, cause, noneOfThese } from '../helpers/as-network.ts';
import { dice } from '../helpers/dice.ts';
import { plainTraits, randomBeliefTree, randomSightings } from '../helpers/suspect-models.ts';
import type { Figure } from './figure.ts';
import { largeTree } from './next.bench.ts';
import { median, paired } from './paired.ts';

const bands = ['none', 'low', 'good', 'high'];

/** Suspects on a board of 200 faults and 200 readings, and beside a general-purpose library on a model that both can hold. */
export async function bench(): Promise<readonly Figure[]> {
  const tree = largeTree();
  const all = tree.readings.map(({ id }, at) => seen(id, at));
  const hundred = all.slice(0, 100);
  const one = median(rounds(15, () => void believe(tree, all)));
  const two = median(rounds(5, () => void believe(tree, hundred, { pairs: true })));
  const belief = believe(tree, all.slice(1));
  const more = median(rounds(15, () => void after(belief, 'r0', 2)));
  return [
    { name: '200 faults, each of 200 readings taken', value: one, unit: 'ms', goal: 16 },
    { name: 'one imagined reading more', value: more, unit: 'ms', goal: null },
    { name: '19,900 pairs as well, each of 100 readings taken', value: two, unit: 'ms', goal: null },
    ...besideLibrary(),
  ];
}

const seen = (reading: string, at: number): Sighting => ({
  reading,
  bands: [{ band: bands[at % bands.length] ?? '', share: 1 }],
  board: 'failing',
  alsoPresent: [],
  entry: null,
});

function rounds(count: number, run: () => void): readonly number[] {
  run();
  return Array.from({ length: count }, () => {
    const begun = performance.now();
    run();
    return performance.now() - begun;
  });
}

/** 10 faults and 10 readings, all taken: more than that the library's junction tree does not hold in reasonable time. The library is given
 *  the network ready made, and a new object each time, because it remembers answers by object. */
function besideLibrary(): readonly Figure[] {
  const rolls = dice(7);
  const tree = randomBeliefTree(rolls, { readings: 10, faults: 10 }, plainTraits);
  const sightings = randomSightings(rolls, tree, 10).map((one) => ({ ...one, bands: one.bands.slice(0, 1) }));
  const { network, given } = asNetwork(tree, sightings);
  const names = [...tree.faults.map(({ id }) => id), noneOfThese];
  const times = paired(
    () => void believe(tree, sightings),
    () => {
      const fresh = { ...given };
      for (const name of names) bayesjs.inferences.junctionTree.infer(network, { [cause]: name }, fresh);
    },
    10,
    3,
  );
  return [
    { name: '10 × 10: suspects, median', value: times.a, unit: 'µs', goal: null },
    { name: '10 × 10: general-purpose library, median', value: times.b, unit: 'µs', goal: null },
    { name: 'library / suspects, median of the pairs', value: times.ratio, unit: '×', goal: null },
  ];
}
