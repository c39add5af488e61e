/** A word on the face and where it stands. */
export interface Lettering {
  readonly text: string;
  /** Centre, in px from the left edge. */
  readonly x: number;
  /** Where it belongs on the scale, 0 to 1. */
  readonly share: number;
  /** 0 is the row next to the scale, 1 the one behind it. */
  readonly row: number;
}

/** Average width of a letter of the faces in use, as a share of the letter size. */
const letterWidth = 0.56;

/** Places words around a scale so that none touches its neighbour: where the room is short, every
 *  second word moves to the row behind.
 *
 *      none      good      high         none          good        high
 *                                  →          between       fast
 */
export function placeLettering(
  words: readonly Omit<Lettering, 'row'>[],
  letter: number,
  width: number,
): Lettering[] {
  const half = (text: string) => (text.length * letter * letterWidth) / 2;
  const inside = words.map((word) => {
    const room = Math.min(half(word.text), width / 2);
    return { ...word, x: Math.min(Math.max(word.x, room), width - room) };
  });
  const tight = inside.some(({ text, x }, index) => {
    const next = inside[index + 1];
    return next !== undefined && x + half(text) + letter * 0.6 > next.x - half(next.text);
  });
  return inside.map((word, index) => ({ ...word, row: tight ? index % 2 : 0 }));
}
