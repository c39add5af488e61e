import type { Root } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';

const options = { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] };

/** CommonMark with tables. Offsets count from the beginning of `text`. */
export const markdown = (text: string): Root => fromMarkdown(text, options);
