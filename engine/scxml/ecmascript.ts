/** A text as an ECMAScript string literal in single quotes, which XML attributes need not escape. */
export const stringLiteral = (text: string): string =>
  `'${JSON.stringify(text)
    .slice(1, -1)
    .replaceAll('\\"', '"')
    .replaceAll("'", "\\'")
    .replace(/[\u2028\u2029\uFFFE\uFFFF]/g, escaped)}'`;

/** The third edition of the language takes U+2028 and U+2029 for ends of lines; XML cannot hold the others. */
const escaped = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;

/** A table of texts as an object literal. */
export const tableLiteral = (rows: readonly (readonly [name: string, text: string])[]): string =>
  `{ ${rows.map(([name, text]) => `${stringLiteral(name)}: ${stringLiteral(text)}`).join(', ')} }`;
