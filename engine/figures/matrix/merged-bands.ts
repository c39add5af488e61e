import type { Need } from '../../model/reading.ts';
import { mostBands } from '../order/ground.ts';
import type { Showing } from './fault-rows.ts';

/** Bands of a reading as few as tell as much, by name: bands that all rows show in the same proportion to each other are one, unless
 *  something asks for one of them. Beyond what a column can hold the rest is one too.
 *  @param shows what each row shows */
export function mergedBands(
  id: string,
  shows: readonly Showing[],
  needs: readonly Need[],
): ReadonlyMap<string, number> {
  const names = [...new Set(shows.flatMap((shares) => shares?.map(({ band }) => band) ?? []))];
  const asked = needs.filter(({ reading }) => reading === id).map(({ bands }) => bands);
  const likely = new Map(names.map((name) => [name, new Float64Array(shows.length)]));
  shows.forEach((shares, row) => {
    for (const { band, share } of shares ?? []) (likely.get(band) as Float64Array)[row] = share;
  });
  const kinds = new Map<string, number>();
  return new Map(
    names.map((name) => {
      const column = likely.get(name) as Float64Array;
      const sum = column.reduce((total, share) => total + share, 0);
      const marks = asked.map((bands) => (bands.includes(name) ? '1' : '0')).join('');
      const key = `${marks} ${[...column].map((share) => (share / sum).toPrecision(9)).join(' ')}`;
      const kind = kinds.get(key) ?? Math.min(kinds.size, mostBands - 1);
      kinds.set(key, kind);
      return [name, kind];
    }),
  );
}
