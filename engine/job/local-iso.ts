/** ISO 8601 with the clock's own offset (`2026-03-01T09:30:00.000+01:00`): its first ten characters
 *  are the bench's day. `date` comes from the edge. */
export function localIso(date: Date): string {
  const offset = -date.getTimezoneOffset();
  const local = new Date(date.getTime() + offset * 60_000).toISOString().slice(0, -1);
  const two = (value: number): string => String(value).padStart(2, '0');
  const away = Math.abs(offset);
  return `${local}${offset < 0 ? '-' : '+'}${two(Math.floor(away / 60))}:${two(away % 60)}`;
}
