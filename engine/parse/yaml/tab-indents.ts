import { linesOf } from '../../source/lines-of.ts';
import type { Edit } from './edited-text.ts';
import type { Remedy } from './trouble.ts';

const tabbed = /^( *\t[ \t]*)(?=[\w"'-][^:]*:(?:\s|$)|-\s)/;

/**
 * Keys that are indented with tabs. Where a tab stands for what its neighbours show:
 *
 *     reset_line:         0
 *     →is: RESET          two further than a line that ends in a colon
 *     →needs:             as far as the line above with as many tabs
 *     →→- v5              two further for each tab more
 */
export function tabIndents(text: string): readonly Remedy[] {
  if (!text.includes('\t')) return [];
  const edits: Edit[] = [];
  let above = { tabs: 0, indent: 0, opens: false };
  for (const { from, to } of linesOf(text)) {
    const line = text.slice(from, to);
    if (line.trim() === '') continue;
    const space = tabbed.exec(line)?.[1];
    const tabs = space?.replaceAll(' ', '').length ?? 0;
    let indent = /^ */.exec(line)?.[0].length ?? 0;
    if (space !== undefined) {
      const step = above.tabs > 0 ? 2 * (tabs - above.tabs) : above.opens ? 2 : 0;
      indent = Math.max(0, above.indent + step);
      edits.push({ from, to: from + space.length, insert: ' '.repeat(indent) });
    }
    above = { tabs, indent, opens: /:\s*(?:#.*)?$/.test(line) };
  }
  const [first] = edits;
  if (first === undefined) return [];
  const span = { from: first.from, to: first.to };
  return [{ facts: { code: 'tab-indent' }, span, fix: { title: 'Write spaces', edits }, repair: edits }];
}
