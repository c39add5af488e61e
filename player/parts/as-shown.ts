/** A value as it is shown: a range with its unit once, minus signs as wide as a plus.
 *  `39.6 MHz .. 40.4 MHz` → `39.6 … 40.4 MHz`: the unit once. Anything else stays as it is. */
export function asShown(written: string): string {
  const text = written.replace(/-(?=\d)/g, '−');
  const match = /^(\S+) (\S.*) \.\. (\S+) (\S.*)$/.exec(text);
  if (match === null || match[2] !== match[4]) return text.replace(' .. ', ' … ');
  return `${match[1]} … ${match[3]} ${match[4]}`;
}
