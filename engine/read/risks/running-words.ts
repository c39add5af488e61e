/**
 * A piece of Markdown as running words, of the same length, so that every place in it is the place in the source.
 *
 *     - **Open** the `lid`, see [there](#there).
 *     .   Open   the      , see                 .
 *
 * Names in code, addresses and links to other sections say where to look and not what to do.
 */
export function runningWords(markdown: string): string {
  return markdown
    .replace(/\[[^\]\n]{0,200}\]\((?:#|[^)\s:]{0,200}\.md)[^)\n]{0,200}\)/gi, blank)
    .replace(/`[^`\n]*`/g, blank)
    .replace(/\]\([^)\n]{0,1000}\)/g, blank)
    .replace(/^([ \t>]*)[-*+](?=\s)/gm, '$1.')
    .replace(/\n(?=[ \t>]*\n)/g, '.')
    .replace(/\|/g, '.')
    .replace(/[*_[\]>\r\n]/g, ' ');
}

const blank = (text: string): string => ' '.repeat(text.length);
