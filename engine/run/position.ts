import { transition } from 'xstate';
import type { MachineEvent } from '../model/machine.ts';
import type { Section } from '../model/section.ts';
import type { LoadedTree, MachineSnapshot } from './load-tree.ts';

/** A remedy that was carried out, and what its proof said. */
export interface DoneRemedy {
  readonly entry: number;
  readonly section: string;
  readonly fault: string;
  readonly effect: 'waits for proof' | 'mended' | 'more is wrong' | 'no effect';
}

/** Where a walk stands. Positions form a chain, so that a step back is one link.
 *
 *      (start) ← Rails first ← Power-good, pg taken ← Power-good, both taken → next section …
 */
export interface Position {
  readonly snapshot: MachineSnapshot;
  /** Null once the proof is complete. */
  readonly section: Section | null;
  /** Inside a fault section: `remedy-2`, `proof-1`, `aside`. */
  readonly phase: string | null;
  /** Readings taken on this visit, and the bands they can be in: none where it could not be read. */
  readonly taken: ReadonlyMap<string, readonly string[]>;
  /** Hazards acknowledged on this visit: digest of the words → entry index. */
  readonly acknowledged: ReadonlyMap<string, number>;
  readonly waitingSince: string | null;
  readonly remedies: readonly DoneRemedy[];
  /** Faults that were put aside without a remedy. */
  readonly declined: readonly string[];
  readonly previous: Position | null;
}

const nothingTaken: Position['taken'] = new Map();
const nothingAcknowledged: Position['acknowledged'] = new Map();

function placeOf(loaded: LoadedTree, snapshot: MachineSnapshot): Pick<Position, 'section' | 'phase'> {
  const value: unknown = snapshot.value;
  const [state, phase] =
    typeof value === 'string' ? [value, null] : (Object.entries(value as object)[0] as [string, string]);
  return { section: loaded.sections.get(state.slice('s-'.length)) ?? null, phase };
}

export function startPosition(loaded: LoadedTree, previous: Position | null = null): Position {
  return {
    snapshot: loaded.initial,
    ...placeOf(loaded, loaded.initial),
    taken: nothingTaken,
    acknowledged: nothingAcknowledged,
    waitingSince: null,
    remedies: previous?.remedies ?? [],
    declined: previous?.declined ?? [],
    previous,
  };
}

/** The machine takes one event; a new section begins with nothing taken or acknowledged. */
export function send(loaded: LoadedTree, position: Position, event: MachineEvent): Position {
  const [snapshot] = transition(loaded.machine, position.snapshot, event);
  return {
    ...position,
    snapshot,
    ...placeOf(loaded, snapshot),
    taken: nothingTaken,
    acknowledged: nothingAcknowledged,
    waitingSince: null,
    previous: position,
  };
}

/** Which remedy of a fault section a phase belongs to, counted from 0. */
export const remedyNumber = (phase: string): number => Number(phase.slice(phase.indexOf('-') + 1)) - 1;
