import { transition } from 'xstate';
import { apply, entryFor, type Session } from '../../engine/run/index.ts';
import { treeOf, walk } from '../helpers/bench.ts';
import { bigTree } from '../helpers/big-tree.ts';
import type { Figure } from './figure.ts';
import { paired } from './paired.ts';

/** One whole session step (a typed value is understood, judged, and moves the walk) beside XState's
 *  bare `transition()` for the same event on the same machine. */
export async function bench(): Promise<readonly Figure[]> {
  const session = atFirstCheck(300);
  const entry = entryFor(session, answer, at);
  if (!entry.ok || entry.value.kind !== 'read') throw new Error('expected the first check to take 4.98 V');
  const { reading, bands } = entry.value.observation;
  const event = { type: 'checked', bands: { [reading]: bands[0] } } as never;
  const { machine } = session.loaded;
  const { snapshot } = session.position;

  const times = paired(
    () => void transition(machine, snapshot, event),
    () => {
      const next = entryFor(session, answer, at);
      if (next.ok) apply(session, next.value);
    },
  );
  return [
    { name: 'transition() alone, median', value: times.a, unit: 'µs', goal: null },
    { name: 'session step: understand, judge, move; median', value: times.b, unit: 'µs', goal: null },
    { name: 'session step / transition(), median of the pairs', value: times.ratio, unit: '×', goal: 2 },
  ];
}

const at = '2026-03-01T09:00:00.000+01:00';
const answer = { say: 'value', reading: null, typed: '4,98 V', board: 'failing' } as const;

export function atFirstCheck(checks: number): Session {
  return walk(treeOf(bigTree(checks)), 'open: bench');
}
