/** A letter or digit, then letters, digits, `_` and `-`. */
export const isBandName = (text: string): boolean => /^[A-Za-z0-9][\w-]*$/.test(text);
