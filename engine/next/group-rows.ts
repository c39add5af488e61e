/** Which rows no check tells apart: the same number, that of the first of them, for rows that show the same in everything.
 *  Each row is summed up in one number first, so that few have to be compared. */
export function groupRows(likely: Float64Array, width: number, rows: number): Int32Array {
  const groups = new Int32Array(rows);
  const alike = new Map<number, number[]>();
  for (let row = 0; row < rows; row += 1) {
    let sum = 0;
    for (let column = 0; column < width; column += 1) {
      sum += (likely[row * width + column] as number) * ((column * 7919 + 1) % 1009);
    }
    const key = Math.round(sum * 1e4);
    const others = alike.get(key) ?? [];
    const first = others.find((other) => isSame(likely, width, other, row));
    groups[row] = first ?? row;
    if (first === undefined) alike.set(key, [...others, row]);
  }
  return groups;
}

function isSame(likely: Float64Array, width: number, a: number, b: number): boolean {
  for (let column = 0; column < width; column += 1) {
    const apart = (likely[a * width + column] as number) - (likely[b * width + column] as number);
    if (Math.abs(apart) > 1e-9) return false;
  }
  return true;
}
