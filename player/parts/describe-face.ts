import type { Face } from './scale-geometry.ts';

/** The face in words, for those who do not see it: `low up to 4.75, good (normal) up to 5.25, high above, in V`. */
export function describeFace(
  { bands, normal }: Pick<Face, 'bands' | 'normal'>,
  labels: readonly string[],
  unit: string,
  read: readonly string[],
): string {
  const parts = bands.map((band, index) => {
    const name = normal.includes(band) ? `${band} (normal)` : band;
    const limit = labels[index];
    return limit === undefined ? `${name} above` : `${name} up to ${limit}`;
  });
  const scale = `Scale in ${unit}: ${parts.join(', ')}.`;
  return read.length === 0 ? scale : `${scale} The reading lies in ${read.join(' or ')}.`;
}
