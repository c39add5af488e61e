const two = (number: number): string => String(Math.trunc(Math.abs(number))).padStart(2, '0');

/** ISO 8601 with an offset (`2026-03-01T09:30:00+01:00`), so that the first ten characters are the bench's day.
 *  @param offset minutes ahead of UTC; by default those of the time zone the machine is set to */
export function localIso(date: Date, offset: number = -date.getTimezoneOffset()): string {
  const local = new Date(date.getTime() + offset * 60_000).toISOString().slice(0, 19);
  return `${local}${offset < 0 ? '-' : '+'}${two(offset / 60)}:${two(offset % 60)}`;
}
