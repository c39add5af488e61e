/** The least expected number of questions that tell things apart when every question can be asked: the length of a Huffman
 *  code. No order of given checks with as many outcomes does better.
 *  @param weights in any scale
 *  @param outcomes how many ways a question can come out, 2 or more */
export function huffman(weights: readonly number[], outcomes = 2): number {
  const heap = weights.toSorted((one, other) => one - other);
  if (heap.length < 2) return 0;
  // With more than two outcomes, empty places fill the lowest question so that the top one is full.
  while ((heap.length - 1) % (outcomes - 1) !== 0) heap.unshift(0);
  let cost = 0;
  // Sums come in ascending order, so two queues do what a heap does.
  const sums: number[] = [];
  let leaf = 0;
  let inner = 0;
  const next = (): number => {
    const fromLeaves =
      leaf < heap.length && (inner >= sums.length || (heap[leaf] as number) <= (sums[inner] as number));
    return (fromLeaves ? heap[leaf++] : sums[inner++]) as number;
  };
  while (heap.length - leaf + sums.length - inner > 1) {
    let sum = 0;
    for (let each = 0; each < outcomes; each += 1) sum += next();
    cost += sum;
    sums.push(sum);
  }
  return cost;
}
