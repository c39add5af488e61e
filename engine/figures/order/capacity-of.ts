const rounds = 40;

/** Bits that a reading can tell of its row at the most, whatever the rows weigh: the capacity of the channel, from above.
 *  Blahut's and Arimoto's iteration; after each round the largest divergence is an upper bound.
 *  @param rows how likely each band is in each row */
export function capacityOf(rows: readonly Float64Array[]): number {
  const kinds = [...new Map(rows.map((row) => [row.join(' '), row])).values()];
  const bands = kinds[0]?.length ?? 0;
  if (kinds.length < 2) return 0;
  let input = kinds.map(() => 1 / kinds.length);
  let bound = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round += 1) {
    const output = Array.from({ length: bands }, (_, band) =>
      kinds.reduce((sum, row, at) => sum + (input[at] as number) * (row[band] as number), 0),
    );
    const told = kinds.map((row) => divergence(row, output));
    bound = Math.min(bound, Math.max(...told));
    const grown = input.map((share, at) => share * 2 ** (told[at] as number));
    const sum = grown.reduce((total, share) => total + share, 0);
    input = grown.map((share) => share / sum);
  }
  return bound;
}

function divergence(row: Float64Array, output: readonly number[]): number {
  let bits = 0;
  for (let band = 0; band < row.length; band += 1) {
    const share = row[band] as number;
    if (share > 0) bits += share * Math.log2(share / (output[band] as number));
  }
  return bits;
}
