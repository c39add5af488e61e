/** Characters that XML 1.0 cannot hold in any form: most control characters, halves of surrogate pairs, U+FFFE and U+FFFF. */
const unprintable =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones to keep out
  /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

const named: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text as it stands between tags. A carriage return would be read back as a line feed. */
export const escapedText = (text: string): string =>
  text
    .replace(unprintable, '\uFFFD')
    .replace(/[&<>]/g, (sign) => named[sign] ?? sign)
    .replace(/\r/g, '&#13;');

/** Text as it stands in a quoted attribute. White space other than the plain one would be read back as that. */
export const escapedAttribute = (text: string): string =>
  text
    .replace(unprintable, '\uFFFD')
    .replace(/[&<>"]/g, (sign) => named[sign] ?? sign)
    .replace(/[\t\n\r]/g, (space) => `&#${space.charCodeAt(0)};`);
