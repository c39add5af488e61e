import type { Reading } from '../model/reading.ts';

/** The reading that another one is like in the end: what one of them told, the others need not tell again. */
export function originsOf({
  readings,
}: {
  readonly readings: readonly Reading[];
}): (reading: string) => string {
  const likes = new Map(readings.map(({ id, like }) => [id, like]));
  return (reading) => {
    const seen = new Set([reading]);
    let at = reading;
    for (let like = likes.get(at); like && !seen.has(like); like = likes.get(at)) {
      seen.add(like);
      at = like;
    }
    return at;
  };
}
