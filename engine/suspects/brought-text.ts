import type { Fault } from '../model/fault.ts';

/** What a remedy says before a spare goes in: the other faults that this one may have left behind, likeliest first.
 *  Empty where it leaves none.
 *  @param faults those of its tree */
export function broughtText({ brings = {} }: Fault, faults: Iterable<Fault>): string {
  const found = [...faults]
    .flatMap(({ id, is }) => (brings[id] === undefined ? [] : [{ is, share: brings[id] }]))
    .toSorted((a, b) => b.share - a.share)
    .map(({ is, share }) => `${is} (in ${Number((share * 100).toPrecision(3))} % of such cases)`);
  return found.length === 0
    ? ''
    : `Before a spare goes in, look for what this may have left behind: ${found.join('; ')}`;
}
