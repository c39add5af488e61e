import type { Observation } from '../model/observation.ts';
import type { Present, Twin } from '../model/present.ts';
import type { Need, Reading } from '../model/reading.ts';
import { observe } from '../scale/index.ts';
import type { Drill, TimedEvent } from './drill.ts';
import { groundOf } from './ground-of.ts';

/** What the trainee can judge readings by: the settings as this board has them, and the known-good board as far as it was asked. */
export function presentOf(drill: Drill): Present {
  const { board, readings } = groundOf(drill);
  const asked = drill.events.flatMap((event): [string, Twin][] => {
    const reading = event.kind === 'twin' ? readings.get(event.reading) : undefined;
    const seen = event.kind === 'twin' && reading ? observe(reading, board.present, event.typed) : null;
    return seen?.ok && seen.value.understood.kind === 'quantity'
      ? [[seen.value.reading, { value: seen.value.understood.quantity, from: 'this job' }]]
      : [];
  });
  const known = [...board.present.twins].filter(([, { from }]) => from !== 'this job');
  return { settings: board.present.settings, twins: new Map([...known, ...asked]) };
}

/** One taking, as it was judged. */
export interface Seen {
  readonly event: Extract<TimedEvent, { readonly kind: 'measured' }>;
  /** Which event of the drill it is. */
  readonly at: number;
  readonly observation: Observation;
}

const known = new WeakMap<readonly TimedEvent[], readonly Seen[]>();

/** Everything that was measured, oldest first. */
export function seenIn(drill: Drill): readonly Seen[] {
  const before = known.get(drill.events);
  if (before !== undefined) return before;
  const { readings } = groundOf(drill);
  const present = presentOf(drill);
  const seen = drill.events.flatMap((event, at) => {
    const reading = event.kind === 'measured' ? readings.get(event.reading) : undefined;
    if (event.kind !== 'measured' || reading === undefined) return [];
    const observed = observe(reading, present, event.typed, drill.equipment);
    return observed.ok ? [{ event, at, observation: observed.value }] : [];
  });
  known.set(drill.events, seen);
  return seen;
}

/** The last word on a reading, or null. */
export const lastSeen = (drill: Drill, reading: string): Seen | null =>
  seenIn(drill).findLast(({ event }) => event.reading === reading) ?? null;

/** Whether what must have been seen was seen, and was as it must be. */
export function isMet(drill: Drill, { reading, bands }: Need): boolean {
  const seen = lastSeen(drill, reading);
  return seen?.observation.bands.every((band) => bands.includes(band)) === true;
}

/** Whether the board itself is as it must be, whatever was seen of it. */
export function isTrue(drill: Drill, { reading, bands }: Need): boolean {
  const { board, readings } = groundOf(drill);
  return readings.has(reading) && bands.includes(board.hidden.bands.bandOf(reading));
}

/** What it is called where it stands in a sentence. */
export const nameOf = (drill: Drill, reading: string): string =>
  (groundOf(drill).readings.get(reading) as Reading | undefined)?.is ?? reading;
