const scheme = /^(?:https?:\/\/|mailto:)/i;
const relativeFile = /^[^/\\?#:\s][^\\:\s]*$/;
const dataImage = /^data:image\/(png|jpeg|svg\+xml)((?:;[a-z0-9=-]+)*),(.*)$/is;
const script = /<script|\bon\w+\s*=|javascript:|<foreignObject/i;

/** Whether a link may lead to this address: the web, a mailbox, a section, a Markdown file beside this one. */
export function isLinkAddress(url: string): boolean {
  return url.startsWith('#') || scheme.test(url) || markdownFile(url) !== null;
}

/** The path of the Markdown file that a link leads to, as it is written; null where it leads to none. */
export function markdownFile(url: string): string | null {
  const [file = ''] = url.split('#', 1);
  return relativeFile.test(file) && /\.md$/i.test(file) ? file : null;
}

/** Whether a picture may come from this address: a file beside this one, or the picture itself without script. */
export function isImageAddress(url: string): boolean {
  const data = dataImage.exec(url);
  if (data === null) return relativeFile.test(url);
  const [, type = '', parameters = '', body = ''] = data;
  return type.toLowerCase() !== 'svg+xml' || !script.test(svgText(parameters, body));
}

function svgText(parameters: string, body: string): string {
  try {
    return /;base64/i.test(parameters) ? atob(decodeURIComponent(body)) : decodeURIComponent(body);
  } catch {
    return '<script';
  }
}
