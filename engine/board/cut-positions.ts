/** A jumper and its position as they stand in a text, names not yet looked up. */
export interface WrittenPosition {
  readonly jumper: string;
  /** Empty where the text ends after a jumper. */
  readonly position: string;
  /** UTF-16 offsets of both words. */
  readonly from: number;
  readonly to: number;
  /** Where the position begins. */
  readonly at: number;
}

/** Words, and `1 - 2` as one of them. */
const word = /\d\s*[-–−]\s*\d+|[^\s,;+=:]+/gu;
const joints = /^and$/i;

/**
 * Takes jumper positions apart.
 *
 *     JP12 1-2 + JP13 open      as board sheets write them
 *     jp12=1-2, jp13: open      as technicians type them
 */
export function cutPositions(text: string): readonly WrittenPosition[] {
  const words = [...text.matchAll(word)]
    .filter(([found]) => !joints.test(found))
    .map(({ 0: found, index }) => ({ text: found, from: index, to: index + found.length }));
  return words.flatMap((jumper, index) => {
    if (index % 2 === 1) return [];
    const position = words[index + 1];
    return {
      jumper: jumper.text,
      position: position?.text.replace(/\s*[-–−]\s*/gu, '-') ?? '',
      from: jumper.from,
      to: position?.to ?? jumper.to,
      at: position?.from ?? jumper.to,
    };
  });
}
