/** How likely something is, as people say it and as a number. */
export interface ShareWords {
  /** `7 in 10` */
  readonly words: string;
  /** `70 %` */
  readonly percent: string;
}

/** `3 in 4` and the like, besides the tenths. */
const parts = [
  [1, 4],
  [1, 3],
  [2, 3],
  [3, 4],
  ...Array.from({ length: 9 }, (_, tenth) => [tenth + 1, 10] as const),
] as const;

/** Of how many it is one, where it is seldom. */
const seldom = [12, 15, 20, 25, 30, 40, 50, 70, 100];

/** @param share 0..1 */
export function shareWords(share: number): ShareWords {
  return { words: inWords(share), percent: inPercent(share) };
}

function inWords(share: number): string {
  if (share >= 0.995) return 'over 99 in 100';
  if (share >= 0.945) return `${Math.round(share * 100)} in 100`;
  if (share >= 0.095) {
    const off = ([some, of]: readonly [number, number]): number => Math.abs(share - some / of);
    const [some, of] = parts.reduce((best, part) => (off(part) < off(best) - 1e-9 ? part : best));
    return `${some} in ${of}`;
  }
  if (share < 0.0095) return 'under 1 in 100';
  const away = (of: number): number => Math.abs(Math.log(share * of));
  return `1 in ${seldom.reduce((best, of) => (away(of) < away(best) ? of : best))}`;
}

function inPercent(share: number): string {
  if (share >= 0.995) return '> 99 %';
  return share < 0.0095 ? '< 1 %' : `${Math.round(share * 100)} %`;
}
