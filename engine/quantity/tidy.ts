/** One kind of space, one kind of minus sign, nothing around. */
export const tidy = (text: string): string =>
  text
    .replace(/[\s\u200b\u2060]+/g, ' ')
    .replace(/[\u2212\u2012\u2013\u2014\ufe63\uff0d]/g, '-')
    .trim();
