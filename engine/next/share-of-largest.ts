/** How likely the likeliest suspect is, rows that no check tells apart counted as one.
 *  @param groups which rows belong together, see `groupRows` */
export function shareOfLargest(shares: Float64Array, groups: Int32Array): number {
  const together = new Float64Array(shares.length);
  let largest = 0;
  for (let row = 0; row < shares.length; row += 1) {
    const group = groups[row] as number;
    const sum = (together[group] as number) + (shares[row] as number);
    together[group] = sum;
    if (sum > largest) largest = sum;
  }
  return largest;
}
