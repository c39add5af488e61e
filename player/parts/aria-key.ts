/** `Alt B` as drawn on a button → `Alt+B` as `aria-keyshortcuts` wants it. */
export function ariaKey(keys: string): string {
  return keys.replace(/\s+/g, '+');
}
