import type { Fault, Shows } from '../../engine/model/fault.ts';
import type { Reading } from '../../engine/model/reading.ts';
import { type Check, propose } from '../../engine/next/index.ts';
import { proposalsOf } from '../../engine/run/proposals-of.ts';
import { believe } from '../../engine/suspects/believe.ts';
import type { Sighting } from '../../engine/suspects/sighting.ts';
import { walk } from '../helpers/bench.ts';
import { dice } from '../helpers/dice.ts';
import { plainReading } from '../helpers/plain-reading.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';
import { faultOf } from '../helpers/suspect-models.ts';
import type { Figure } from './figure.ts';
import { median } from './paired.ts';

const size = 200;
const bands = ['none', 'low', 'good', 'high'];
const rounds = 25;

/** One more reading on a board of 200 faults and 200 readings: the suspects ranked anew, and the next check proposed with two
 *  steps for the best 8. Each time another reading, so that nothing is known from before but what follows from the tree. */
export async function bench(): Promise<readonly Figure[]> {
  const tree = largeTree();
  const checks = tree.readings.map(checkOf);
  const rank: number[] = [];
  const both: number[] = [];
  for (let round = 0; round < rounds + 5; round += 1) {
    const seen = sightings(round);
    const left = checks.filter(({ reading }) => seen.every((one) => one.reading !== reading.id));
    const begun = performance.now();
    const belief = believe(tree, seen);
    const ranked = performance.now();
    // What is left is worked out when it is asked for.
    void propose(belief, tree, left).minutesLeft;
    if (round < 5) continue;
    rank.push(ranked - begun);
    both.push(performance.now() - begun);
  }
  return [
    { name: '200 faults × 200 readings, ranked; median', value: median(rank), unit: 'ms', goal: null },
    {
      name: 'the same, and proposed, two steps for the best 8; median',
      value: median(both),
      unit: 'ms',
      goal: 16,
    },
    ...shippedTrees.flatMap(({ id, tree: shipped }) => (shipped === null ? [] : [onShipped(id, shipped)])),
  ];
}

function onShipped(id: string, tree: Parameters<typeof walk>[0]): Figure {
  const times = Array.from({ length: rounds }, () => {
    const answers = tree.settings.map(({ usual, ...setting }) =>
      setting.kind === 'options' ? `${usual}` : '?',
    );
    const session = walk(tree, 'open: bench', ...answers, 'yes', 'acknowledge');
    const begun = performance.now();
    void proposalsOf(session)?.minutesLeft;
    return performance.now() - begun;
  });
  return {
    name: `${id}: suspects and proposals of a job; median`,
    value: median(times),
    unit: 'ms',
    goal: null,
  };
}

/** Six seen already, the last one new. */
const sightings = (round: number): readonly Sighting[] =>
  Array.from({ length: 6 }, (_, at) => ({
    reading: `r${(round * 7 + at * 31) % size}`,
    bands: [{ band: bands[(round + at) % bands.length] ?? '', share: 1 }],
    board: 'failing' as const,
    alsoPresent: [],
    entry: null,
  }));

const checkOf = (reading: Reading): Check => ({
  reading,
  section: null,
  minutes: reading.minutes,
  wait: 0,
  changes: {},
});

/** Every fault shows something in one reading of five. */
export function largeTree(): { readonly readings: readonly Reading[]; readonly faults: readonly Fault[] } {
  const { upTo, chance } = dice(20);
  const readings = Array.from({ length: size }, (_, at) => ({
    ...plainReading(`r${at}`, { kind: 'options', options: bands.map((name) => ({ name, means: null })) }, [
      'good',
    ]),
    minutes: 1 + upTo(10),
  }));
  const showsOf = ({ id }: Reading): Shows => {
    const share = (1 + upTo(9)) / 10;
    const [first = '', second = ''] = [bands[upTo(2)], bands[2 + upTo(2)]];
    return {
      reading: id,
      shares: [
        { band: first, share },
        { band: second, share: 1 - share },
      ],
    };
  };
  const faults = Array.from({ length: size }, (_, at) =>
    faultOf(`f${at}`, {}, { weight: 1 + upTo(20), shows: readings.filter(() => chance(0.2)).map(showsOf) }),
  );
  return { readings, faults };
}
