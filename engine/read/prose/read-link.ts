import type { Link } from '../../parse/parse-body.ts';
import type { ReadContext } from '../read-context.ts';
import type { LinkSyntax } from '../section-syntax.ts';
import { markdownFile } from './addresses.ts';
import { spanOf } from './span-of.ts';

/** The address of a link, and the file and the section it names. */
export function readLink(link: Link, context: ReadContext): LinkSyntax {
  const { url } = link;
  const file = markdownFile(url);
  const slug = file === null && !url.startsWith('#') ? '' : url.slice((file?.length ?? 0) + 1);
  return {
    url,
    file: file === null ? null : decoded(file),
    section: slug === '' && !url.startsWith('#') ? null : decoded(slug),
    span: addressSpan(link, context.text),
  };
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
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
