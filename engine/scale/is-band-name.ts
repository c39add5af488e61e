/** A letter or digit, then letters, digits, `_` and `-`. */
export const isBandName = (text: string): boolean => /^[\p{L}\p{N}][\p{L}\p{N}_-]*$/u.test(text);
