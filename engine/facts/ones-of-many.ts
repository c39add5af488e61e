import type { Reading } from '../model/reading.ts';
import { nameOfOne, oneOfMany } from '../names/one-of-many.ts';
import { bandsOf, memberReading } from '../scale/index.ts';

/** The readings that are one of many alike, found in a band out of normal. A name that tells no such one makes none: that
 *  is reported where it is written.
 *  @param names `the short one of rails` */
export function onesOfMany(
  names: readonly string[],
  readings: ReadonlyMap<string, Reading>,
): readonly Reading[] {
  return [...new Set(names)].flatMap((name): readonly Reading[] => {
    const one = oneOfMany(name);
    const group = readings.get(one?.group ?? '');
    if (one === null || group?.measure.kind !== 'each') return [];
    const member = memberReading(group);
    if (!bandsOf(member).includes(one.band) || group.measure.normal.includes(one.band)) return [];
    return [
      {
        ...member,
        id: nameOfOne(one),
        is: `${group.is}: the one that is ${one.band}`,
        like: null,
        needs: [],
        hidden: null,
        after: [],
      },
    ];
  });
}
