import { Bench } from 'tinybench';
import { transition } from 'xstate';
import { apply, entryFor, type Session } from '../../engine/run/index.ts';
import { treeOf, walk } from '../helpers/bench.ts';
import { bigTree } from '../helpers/big-tree.ts';
import type { Figure } from './figure.ts';

/** One whole session step (a typed value is understood, judged, and moves the walk) beside XState's
 *  bare `transition()` for the same event on the same machine. */
export async function bench(): Promise<readonly Figure[]> {
  const session = atFirstCheck(300);
  const entry = entryFor(session, answer, at);
  if (!entry.ok) throw new Error(entry.refusal.text);
  const { machine } = session.loaded;
  const { snapshot } = session.position;
  const bands = entry.value.kind === 'read' ? { [entry.value.observation.reading]: entry.value.observation.bands[0] ?? '' } : {};

  const side = new Bench({ time: 1500, warmupTime: 300 });
  side.add('bare', () => void transition(machine, snapshot, { type: 'checked', bands } as never));
  side.add('step', () => {
    const next = entryFor(session, answer, at);
    if (next.ok) apply(session, next.value);
  });
  await side.run();
  const [bare = 1, step = 1] = side.tasks.map(({ result }) =>
    result.state === 'completed' ? result.latency.p50 * 1000 : Number.NaN,
  );
  return [
    { name: 'transition() alone, median', value: bare, unit: 'µs', goal: null },
    { name: 'session step: understand, judge, move; median', value: step, unit: 'µs', goal: null },
    { name: 'session step / transition()', value: step / bare, unit: '×', goal: 2 },
  ];
}

const at = '2026-03-01T09:00:00.000+01:00';
const answer = { say: 'value', reading: null, typed: '4,98 V', board: 'failing' } as const;

export function atFirstCheck(checks: number): Session {
  return walk(treeOf(bigTree(checks)), 'open: bench');
}
