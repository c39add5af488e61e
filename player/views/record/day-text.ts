/** `2031-04-05T18:30:00+02:00` → `5 April 2031`: the day at the bench, whatever the time zone now. */
export function dayText(at: string): string {
  return new Date(`${at.slice(0, 10)}T12:00:00`).toLocaleDateString('en-GB', { dateStyle: 'long' });
}
