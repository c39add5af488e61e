/** `Bus clock` → `bus clock` inside a sentence; `CPU clock` stays. */
export const inSentence = (is: string): string =>
  /^\p{Lu}\p{Ll}/u.test(is) ? `${is.charAt(0).toLowerCase()}${is.slice(1)}` : is;
