import type { Entry } from '../../engine/model/entry.ts';

/** A longer silence than this was no work at the bench. */
const away = 30;

/** Minutes at the bench so far: the time between entries, long silences left out.
 *  `now` counts from the last entry on. */
export function benchMinutes(entries: readonly Entry[], now: string | null): number {
  const times = [...entries.map(({ at }) => at), ...(now === null ? [] : [now])].map((at) => Date.parse(at));
  let minutes = 0;
  for (const [index, time] of times.entries()) {
    const gap = (time - (times[index - 1] ?? time)) / 60_000;
    if (gap > 0 && gap <= away) minutes += gap;
  }
  return Math.floor(minutes);
}

/** `0:07`, `1:42`: hours and minutes. */
export function clockText(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}
