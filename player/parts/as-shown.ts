/** A value as it is shown: a range with its unit once, minus signs as wide as a plus, and no line that
 *  ends between a number and its unit.
 *  `39.6 MHz .. 40.4 MHz` → `39.6 … 40.4 MHz`. Anything else stays as it is. */
export function asShown(written: string): string {
  const text = written.replace(/-(?=\d)/g, '−');
  const match = /^((?:all )?\S+) (\S.*) \.\. (\S+) (\S.*)$/.exec(text);
  const once =
    match === null || match[2] !== match[4]
      ? text.replace(' .. ', ' … ')
      : `${match[1]} … ${match[3]} ${match[4]}`;
  return once.replace(/(\d) (?=[\p{L}%°])/gu, '$1\u00a0');
}
