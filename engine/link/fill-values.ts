import type { Block, Inline } from '../model/prose.ts';
import type { Values } from './resolve-values.ts';

/** Running text with its code spans turned into the values they stand for. */
export function fillInlines(inlines: readonly Inline[], values: Values): readonly Inline[] {
  return values.size === 0 ? inlines : inlines.map((inline) => fillInline(inline, values));
}

function fillInline(inline: Inline, values: Values): Inline {
  if (inline.type === 'code') {
    const formula = values.get(inline.value);
    return formula ? { type: 'value', written: inline.value, formula } : inline;
  }
  return 'children' in inline ? { ...inline, children: fillInlines(inline.children, values) } : inline;
}

/** Prose with its code spans turned into the values they stand for. */
export function fillBlocks(blocks: readonly Block[], values: Values): readonly Block[] {
  return values.size === 0 ? blocks : blocks.map((block) => fillBlock(block, values));
}

function fillBlock(block: Block, values: Values): Block {
  switch (block.type) {
    case 'paragraph':
    case 'heading':
      return { ...block, children: fillInlines(block.children, values) };
    case 'list':
      return { ...block, items: block.items.map((item) => fillBlocks(item, values)) };
    case 'quote':
      return { ...block, children: fillBlocks(block.children, values) };
    case 'table':
      return { ...block, rows: block.rows.map((row) => row.map((cell) => fillInlines(cell, values))) };
    case 'preformatted':
    case 'rule':
      return block;
  }
}
