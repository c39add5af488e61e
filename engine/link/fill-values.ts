import type { Block, Inline } from '../model/prose.ts';
import type { Values } from './resolve-values.ts';

const changeNothing = ({ codes, address }: Values): boolean => codes.size === 0 && address === null;

/** Running text with its code spans turned into what they stand for, and its addresses into those that hold here. */
export function fillInlines(inlines: readonly Inline[], values: Values): readonly Inline[] {
  return changeNothing(values) ? inlines : inlines.map((inline) => fillInline(inline, values));
}

function fillInline(inline: Inline, values: Values): Inline {
  if (inline.type === 'code') return values.codes.get(inline.value) ?? inline;
  const placed = 'url' in inline && values.address ? { ...inline, url: values.address(inline.url) } : inline;
  return 'children' in placed ? { ...placed, children: fillInlines(placed.children, values) } : placed;
}

/** Prose with its code spans and addresses filled in. */
export function fillBlocks(blocks: readonly Block[], values: Values): readonly Block[] {
  return changeNothing(values) ? blocks : blocks.map((block) => fillBlock(block, values));
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
