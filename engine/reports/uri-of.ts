/** A path as the address of a file: relative as it is, absolute with `file:` before it. */
export function uriOf(path: string): string {
  const encoded = path
    .replaceAll('\\', '/')
    .replace(/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g, '\uFFFD')
    .split('/')
    .map(encodeURIComponent)
    .join('/');
  const drive = /^([A-Za-z])%3A\//.exec(encoded);
  if (drive !== null) return `file:///${drive[1]}:${encoded.slice(4)}`;
  return encoded.startsWith('/') ? `file://${encoded}` : encoded;
}
