import type { Block, Inline } from '../../model/prose.ts';

/** The words of a run of text without its markup. */
export function wordsOf(inlines: readonly Inline[]): string {
  return inlines.map(wordsOfInline).join('');
}

function wordsOfInline(inline: Inline): string {
  switch (inline.type) {
    case 'text':
    case 'code':
      return inline.value;
    case 'value':
      return inline.written;
    case 'image':
      return inline.alt;
    case 'break':
      return '\n';
    default:
      return wordsOf(inline.children);
  }
}

/** The words of some blocks, one line to a block. */
export function wordsOfBlocks(blocks: readonly Block[]): string {
  return blocks.map(wordsOfBlock).join('\n');
}

function wordsOfBlock(block: Block): string {
  switch (block.type) {
    case 'paragraph':
    case 'heading':
      return wordsOf(block.children);
    case 'list':
      return block.items.map(wordsOfBlocks).join('\n');
    case 'quote':
      return wordsOfBlocks(block.children);
    case 'preformatted':
      return block.value;
    case 'table':
      return block.rows.map((row) => row.map(wordsOf).join('\t')).join('\n');
    case 'rule':
      return '';
  }
}
