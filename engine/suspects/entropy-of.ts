/** How much shares that add up to 1 leave open, in bits. */
export function entropyOf(shares: ArrayLike<number>): number {
  let bits = 0;
  for (let at = 0; at < shares.length; at += 1) {
    const share = shares[at] as number;
    if (share > 0) bits -= share * Math.log2(share);
  }
  return bits;
}
