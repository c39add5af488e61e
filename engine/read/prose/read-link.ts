import type { Link } from '../../parse/parse-body.ts';
import type { ReadContext } from '../read-context.ts';
import type { LinkSyntax } from '../section-syntax.ts';
import { spanOf } from './span-of.ts';

/** The address of a link, and the section of this file it names. */
export function readLink(link: Link, context: ReadContext): LinkSyntax {
  return { url: link.url, section: sectionOf(link.url), span: addressSpan(link, context.text) };
}

function sectionOf(url: string): string | null {
  if (!url.startsWith('#')) return null;
  try {
    return decodeURIComponent(url.slice(1));
  } catch {
    return url.slice(1);
  }
}

/** `[Title](#slug)` → the place of `#slug`; the whole link where it is written otherwise. */
function addressSpan(link: Link, text: string): LinkSyntax['span'] {
  const whole = spanOf(link);
  const written = text.slice(whole.from, whole.to);
  const bracket = written.lastIndexOf('](');
  const address = bracket < 0 ? null : /^\s*<?([^\s<>)]+)/.exec(written.slice(bracket + 2));
  if (!address?.[1]) return whole;
  const from = whole.from + bracket + 2 + address[0].length - address[1].length;
  return { from, to: from + address[1].length };
}
