import fc from 'fast-check';
import { emitMachine } from '../../engine/emit/emit-machine.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { Condition, Section } from '../../engine/model/section.ts';
import { plainReading } from './plain-reading.ts';

const readings = ['v5', 'cpu_clk', 'r_gnd of v5, 10 Ω', 'it\'s "odd" & <low>', '__proto__'];
const bands = ['none', 'low', 'good', 'high'];

/** Slugs as headings make them: digits first, letters of many scripts, signs that XML names cannot have. */
const slug = fc.oneof(
  fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,8}$/),
  fc.constantFrom('5-v-and-12-v', 'größe', '10-µf', 'питание', '電源', '_x', 'a_x00b5_', 'ª-º', '--', '𝒱'),
);

type Kind = 'check' | 'task' | 'fault' | 'stop' | 'call';
const kinds = fc.oneof(
  { weight: 6, arbitrary: fc.constant<Kind>('check') },
  { weight: 2, arbitrary: fc.constantFrom<Kind>('task', 'fault', 'call') },
  { weight: 1, arbitrary: fc.constant<Kind>('stop') },
);

const condition: fc.Arbitrary<Condition> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc
      .uniqueArray(
        fc.tuple(fc.constantFrom(...readings), fc.uniqueArray(fc.constantFrom(...bands), { minLength: 1 })),
        {
          selector: ([reading]) => reading,
          maxLength: 3,
        },
      )
      .map((clauses) => ({ kind: 'bands' as const, bands: Object.fromEntries(clauses) })),
  },
  { weight: 2, arbitrary: fc.constant({ kind: 'otherwise' as const }) },
  { weight: 1, arbitrary: fc.constant({ kind: 'unread' as const }) },
);

interface Seed {
  readonly slug: string;
  readonly kind: Kind;
  readonly conditions: readonly Condition[];
  readonly faults: number;
  readonly ways: readonly number[];
  /** What a call follows. */
  readonly inside: readonly Seed[];
}

const { list } = fc.letrec<{ list: readonly Seed[] }>((tie) => ({
  list: fc.uniqueArray(
    fc.record({
      slug,
      kind: kinds,
      conditions: fc.array(condition, { minLength: 1, maxLength: 4 }),
      faults: fc.integer({ min: 1, max: 3 }),
      ways: fc.array(fc.nat({ max: 99 }), { minLength: 5, maxLength: 5 }),
      inside: fc.oneof({ maxDepth: 2 }, fc.constant([]), tie('list')),
    }),
    { minLength: 1, maxLength: 7, selector: (seed) => seed.slug },
  ),
}));

const base = (id: string) => ({ id, title: id, hazards: [], blocks: [] });

interface Place {
  readonly id: string;
  /** Where the way with this number leads. */
  readonly to: (way: number) => string;
}

type Make = (seed: Seed, place: Place) => readonly Section[];

const makers: Readonly<Record<Kind, Make>> = {
  check: ({ conditions }, { id, to }) => [
    {
      ...base(id),
      kind: 'check',
      readings: readings.slice(0, 2),
      outcomes: conditions.map((each, way) => ({
        condition: each,
        written: each.kind,
        target: to(way),
        remark: [],
      })),
    },
  ],
  task: (_seed, { id, to }) => [
    { ...base(id), kind: 'task', task: [], sets: {}, onlyIf: [], minutes: 1, wait: 0, target: to(0) },
  ],
  fault: ({ faults }, { id }) => [
    {
      ...base(id),
      kind: 'fault',
      onlyIf: [],
      remedies: Array.from({ length: faults }, (_, at) => ({ fault: `f${at}`, hazards: [], blocks: [] })),
      proof: [],
      proofTries: {},
    },
  ],
  stop: (_seed, { id }) => [{ ...base(id), kind: 'stop', reason: [] }],
  call: (seed, place) => {
    const { id, to } = place;
    const [first] = seed.inside;
    if (first === undefined) return makers.stop(seed, place);
    const ends = ['found', 'not-found'].map((end, way) => ({ end, target: to(way), remark: [] }));
    return [
      {
        ...base(id),
        kind: 'call',
        procedure: 'p',
        procedureTitle: 'P',
        given: [],
        first: `${id}.${first.slug}`,
        ends,
      },
      ...sectionsOf(
        seed.inside,
        `${id}.`,
        ends.map(({ target }) => target),
      ),
    ];
  },
};

/** @param within the id of the call and a dot, or nothing
 *  @param exits sections outside that the ends of the call lead to */
function sectionsOf(seeds: readonly Seed[], within: string, exits: readonly string[]): readonly Section[] {
  const ids = seeds.map((seed) => within + seed.slug);
  const targets = [...ids, ...exits];
  return seeds.flatMap((seed, index) =>
    makers[seed.kind](seed, {
      id: ids[index] as string,
      to: (way) => targets[(seed.ways[way] ?? 0) % targets.length] as string,
    }),
  );
}

const elsewhere: Section = { ...base('to:memory'), kind: 'hand-over', tree: 'memory' };

/** The sections of a random tree: checks, tasks, faults with one to three remedies, stops, calls in calls, and ways to
 *  another tree. */
export const randomSections: fc.Arbitrary<readonly Section[]> = list.map((seeds) => [
  ...sectionsOf(seeds, '', [elsewhere.id]),
  elsewhere,
]);

/** A tree of these sections with what an export needs. */
export function treeOf(sections: readonly Section[], words: Partial<CompiledTree> = {}): CompiledTree {
  const [first, ...rest] = sections;
  if (first === undefined) throw new Error('expected a section');
  return {
    format: 1,
    kind: 'compiled-tree',
    id: 'random',
    title: 'Random',
    symptom: 'Nothing moves',
    boards: [],
    digest: '0',
    given: [],
    conditions: [],
    settings: [],
    readings: readings.map((id) =>
      plainReading(id, { kind: 'options', options: bands.map((name) => ({ name, means: null })) }, ['good']),
    ),
    faults: [],
    hazards: [],
    blocks: [],
    sections,
    machine: emitMachine([first, ...rest]),
    ...words,
  };
}
