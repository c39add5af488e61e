const two = (number: number) => String(Math.trunc(Math.abs(number))).padStart(2, '0');

/** ISO 8601 with an offset, so that the first ten characters are the day at the bench.
 *  `offset` is minutes ahead of UTC; by default that of the time zone the browser is set to. */
export function isoWithOffset(date: Date, offset: number = -date.getTimezoneOffset()): string {
  const local = new Date(date.getTime() + offset * 60_000).toISOString().slice(0, 19);
  return `${local}${offset < 0 ? '-' : '+'}${two(offset / 60)}:${two(offset % 60)}`;
}
