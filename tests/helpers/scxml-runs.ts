import scxml from '@scion-scxml/scxml';
import { initialTransition, transition } from 'xstate';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { MachineEvent } from '../../engine/model/machine.ts';
import { loadTree } from '../../engine/run/load-tree.ts';
import { bandsOf } from '../../engine/scale/index.ts';
import { scxmlOf } from '../../engine/scxml/index.ts';
import { idOf } from '../../engine/scxml/state-path.ts';

/** The part of the interpreter that is used here; it is a package of an older kind. */
interface Scion {
  documentStringToModel(url: string, text: string, done: (error: Error | null, model: Model) => void): void;
  readonly core: {
    readonly Statechart: new (
      prepared: unknown,
      options: { readonly sessionRegistry: Map<string, Statechart> },
    ) => Statechart;
  };
}
interface Model {
  prepare(done: (error: Error | null, prepared: unknown) => void): void;
}
interface Statechart {
  start(): readonly string[];
  gen(name: string, data: unknown): readonly string[];
}

const scion = scxml as unknown as Scion;

/** A new run of an SCXML document in the independent interpreter, each time it is called. */
export async function interpreted(scxml: string): Promise<() => Statechart> {
  const prepared = await new Promise<unknown>((resolve, reject) => {
    scion.documentStringToModel('', scxml, (error, model) => {
      if (error) reject(error);
      else model.prepare((trouble, made) => (trouble ? reject(trouble) : resolve(made)));
    });
  });
  // Its own registry would keep every run for ever.
  return () => new scion.core.Statechart(prepared, { sessionRegistry: new Map() });
}

/** A stream of numbers below `below`, the same for the same seed. */
function numbersFrom(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    // mulberry32, public domain
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) % below;
  };
}

/** What could be said of each name that a condition may ask for. */
const sayings = (tree: CompiledTree): readonly (readonly [string, readonly string[]])[] => [
  ...tree.readings.map((reading) => [reading.id, bandsOf(reading)] as const),
  ...tree.settings.flatMap((setting) =>
    setting.kind === 'options' ? [[setting.id, setting.options.map(({ name }) => name)] as const] : [],
  ),
];

function randomEvent(
  tree: CompiledTree,
  said: ReturnType<typeof sayings>,
  next: (below: number) => number,
): MachineEvent {
  const kind = next(20);
  if (kind < 11) {
    const bands = said
      .filter(() => next(12) > 0)
      .map(([name, all]) => [name, all[next(all.length)] ?? ''] as const);
    return { type: 'checked', bands: Object.fromEntries(bands) };
  }
  if (kind === 19)
    return {
      type: 'go',
      section: next(8) === 0 ? 'nowhere' : (tree.sections[next(tree.sections.length)]?.id ?? ''),
    };
  return { type: (['done', 'done', 'failed', 'failed', 'proved', 'unread'] as const)[next(6)] ?? 'done' };
}

/** Events of one run. */
const steps = 25;

/** The deepest state of a value of our machine, by the id that the export gives it. */
function stateIdOf(value: unknown): string {
  const path: string[] = [];
  let inside: unknown = value;
  while (typeof inside === 'object' && inside !== null) {
    const [[key, deeper] = ['', undefined]] = Object.entries(inside);
    path.push(key);
    inside = deeper;
  }
  return idOf([...path, String(inside)]);
}

export interface Visited {
  /** States that both visited. */
  readonly states: number;
  /** Null, or the first place where they parted. */
  readonly parted: string | null;
  readonly ids: ReadonlySet<string>;
}

/** Walks `runs` random runs through our machine and through the interpreter of its SCXML, and compares the state after
 *  every event. The same seed gives the same runs. */
export async function compareRuns(tree: CompiledTree, runs: number, seed: number): Promise<Visited> {
  const { machine } = loadTree(tree);
  const begin = await interpreted(scxmlOf(tree));
  const said = sayings(tree);
  const next = numbersFrom(seed);
  const ids = new Set<string>();
  let states = 0;
  for (let run = 0; run < runs; run += 1) {
    let [ours] = initialTransition(machine);
    const theirs = begin();
    let found = theirs.start();
    const walked: MachineEvent[] = [];
    for (let step = 0; step <= steps; step += 1) {
      const id = stateIdOf(ours.value);
      ids.add(id);
      states += 1;
      if (found.length !== 1 || found[0] !== id)
        return {
          states,
          ids,
          parted: `seed ${seed}, run ${run}: ours ${id}, theirs ${found.join(' ')}, after ${JSON.stringify(walked)}`,
        };
      if (ours.status !== 'active' || step === steps) break;
      const event = randomEvent(tree, said, next);
      walked.push(event);
      [ours] = transition(machine, ours, event);
      const { type, ...data } = event;
      found = theirs.gen(type, data);
    }
  }
  return { states, ids, parted: null };
}
