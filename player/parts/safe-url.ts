const linkSchemes = ['http:', 'https:', 'mailto:'];
const imageSchemes = ['http:', 'https:'];

/** The scheme the browser would see: it drops control characters and spaces before it looks. */
function schemeOf(url: string): string | null {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: exactly those that a browser ignores
  const seen = url.replace(/[\u0000-\u0020\u007f-\u00a0]/g, '').toLowerCase();
  const match = /^([a-z][a-z0-9+.-]*:)/.exec(seen);
  return match?.[1] ?? null;
}

/** The URL of a link that may be followed from prose, or null: sections of the tree are walked to, not linked. */
export function linkUrl(url: string): string | null {
  const scheme = schemeOf(url);
  return scheme !== null && linkSchemes.includes(scheme) ? url : null;
}

/** The URL of an image that may be shown: beside the tree, or from the web. */
export function imageUrl(url: string): string | null {
  const scheme = schemeOf(url);
  if (scheme === null) return url.startsWith('//') ? null : url;
  return imageSchemes.includes(scheme) ? url : null;
}
