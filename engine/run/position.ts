import type { MachineEvent } from '../model/machine.ts';
import type { Section } from '../model/section.ts';
import type { LoadedTree, MachineSnapshot } from './load-tree.ts';
import { sectionAt } from './section-at.ts';

/** A remedy that was carried out, and what its proof said. */
export interface DoneRemedy {
  readonly entry: number;
  readonly section: string;
  readonly fault: string;
  readonly effect: 'waits for proof' | 'mended' | 'more is wrong' | 'no effect';
}

/** The walk was left for a check beside it. */
export interface Detour {
  /** Where it was left. */
  readonly section: string;
  /** The entry that left it. */
  readonly entry: number;
  /** What it was left for, the last time. */
  readonly reading: string;
  /** The visit that it was left in. */
  readonly left: Position;
}

/** Where a walk stands. Positions form a chain, so that a step back is one link.
 *
 *      (start) ← Rails first ← Power-good, pg taken ← Power-good, both taken → next section …
 */
export interface Position {
  /** The tree that is walked here: a job may be handed over to another one. */
  readonly loaded: LoadedTree;
  readonly snapshot: MachineSnapshot;
  /** Null once the proof is complete. */
  readonly section: Section | null;
  /** Inside a fault section: `remedy-2`, `proof-1`, `aside`. Before a procedure is begun: `call`. */
  readonly phase: string | null;
  /** Whether the board shows this tree's symptom; null until asked. */
  readonly symptom: boolean | null;
  /** Entry that acknowledged the hazards above the first section; −1 before. */
  readonly headAcknowledged: number;
  /** Readings taken on this visit, and the bands they can be in: none where it could not be read. */
  readonly taken: ReadonlyMap<string, readonly string[]>;
  /** Hazards acknowledged on this visit: digest of the words → entry index. */
  readonly acknowledged: ReadonlyMap<string, number>;
  /** What goes on at this visit although what must be seen first was not: reading ids, `''` for the section's work. */
  readonly overridden: ReadonlySet<string>;
  readonly waitingSince: string | null;
  /** What the board is in: `{ cards: 'out' }`. */
  readonly conditions: Readonly<Record<string, string>>;
  readonly remedies: readonly DoneRemedy[];
  /** Faults that were put aside without a remedy. */
  readonly declined: readonly string[];
  /** Everything the section reads is computed, so the walk went on by itself. A step back passes it too. */
  readonly passed: boolean;
  /** Set from a detour on until somebody returns from it, or the job goes on in another tree. */
  readonly detour: Detour | null;
  readonly previous: Position | null;
}

/** What a section begins with. */
const newVisit = {
  taken: new Map<string, readonly string[]>(),
  acknowledged: new Map<string, number>(),
  overridden: new Set<string>(),
  waitingSince: null,
  passed: false,
} satisfies Partial<Position>;

function placeOf(loaded: LoadedTree, snapshot: MachineSnapshot): Pick<Position, 'section' | 'phase'> {
  const { section, phase } = sectionAt(snapshot.value);
  return { section: loaded.sections.get(section) ?? null, phase };
}

/** The beginning of a tree. What was done to the board before stays done. */
export function startPosition(loaded: LoadedTree, previous: Position | null = null): Position {
  return {
    loaded,
    snapshot: loaded.initial,
    ...placeOf(loaded, loaded.initial),
    symptom: previous?.loaded === loaded ? previous.symptom : null,
    headAcknowledged: -1,
    ...newVisit,
    conditions: conditionsIn(loaded, previous?.conditions ?? {}),
    remedies: previous?.remedies ?? [],
    declined: previous?.declined ?? [],
    detour: null,
    previous,
  };
}

/** A board comes in the first value of each condition, unless it is known to be in another one. */
function conditionsIn({ tree }: LoadedTree, now: Position['conditions']): Position['conditions'] {
  return Object.fromEntries(
    tree.conditions.map(({ id, values }) => {
      const known = now[id];
      return [id, known !== undefined && values.includes(known) ? known : (values[0] ?? '')];
    }),
  );
}

/** The machine takes one event; a new section begins with nothing taken or acknowledged. */
export function send(position: Position, event: MachineEvent): Position {
  const { loaded } = position;
  const snapshot = loaded.machine.transition(position.snapshot, event, loaded.scope);
  return { ...position, snapshot, ...placeOf(loaded, snapshot), ...newVisit, previous: position };
}

/** Where a step back leads; null at the first step. */
export function stepBack(position: Position): Position | null {
  let at = position.previous;
  while (at?.passed) at = at.previous;
  return at;
}

/** Which remedy of a fault section a phase belongs to, counted from 0. */
export const remedyNumber = (phase: string): number => Number(phase.slice(phase.indexOf('-') + 1)) - 1;
