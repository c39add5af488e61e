/** Times two things in turn, A B A B …, so that a machine whose speed drifts is fair to both.
 *  @returns microseconds of one call of each, and the ratio b / a; medians over the rounds */
export function paired(
  a: () => void,
  b: () => void,
  rounds = 60,
  calls = 400,
): { a: number; b: number; ratio: number } {
  const time = (run: () => void): number => {
    const begun = performance.now();
    for (let call = 0; call < calls; call += 1) run();
    return ((performance.now() - begun) * 1000) / calls;
  };
  for (let round = 0; round < 10; round += 1) {
    time(a);
    time(b);
  }
  const times = Array.from({ length: rounds }, () => [time(a), time(b)] as const);
  return {
    a: median(times.map(([one]) => one)),
    b: median(times.map(([, other]) => other)),
    ratio: median(times.map(([one, other]) => other / one)),
  };
}

export function median(values: readonly number[]): number {
  return values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;
}
