import type { Block } from '../../model/prose.ts';
import type { Blockquote, RootContent } from '../../parse/parse-body.ts';
import { refuseHiddenHazard } from '../hazards/refuse-hidden-hazard.ts';
import { type ReadContext, report } from '../read-context.ts';
import { readInlines } from './read-inlines.ts';
import { spanOf } from './span-of.ts';

/** Lists and quotes inside one another are followed this far. */
const deepest = 50;

/** Blocks of prose, from the parser's nodes to the model's. */
export function readBlocks(nodes: readonly RootContent[], context: ReadContext, depth = 0): Block[] {
  const blocks: Block[] = [];
  for (const node of nodes) {
    const block = readBlock(node, context, depth);
    if (block === null) continue;
    refuseHiddenHazard(block, depth, spanOf(node), context);
    blocks.push(block);
  }
  return blocks;
}

/** What a quote holds. Its first block may begin with a signal word: that is for the quote to judge. */
export function readQuoted(quote: Blockquote, context: ReadContext, depth = 0): Block[] {
  const [first, ...others] = quote.children;
  const block = first && readBlock(first, context, depth + 1);
  return [...(block ? [block] : []), ...readBlocks(others, context, depth + 1)];
}

function readBlock(node: RootContent, context: ReadContext, depth: number): Block | null {
  const span = spanOf(node);
  if (depth > deepest) return { type: 'preformatted', value: context.text.slice(span.from, span.to) };
  switch (node.type) {
    case 'paragraph':
      return { type: 'paragraph', children: readInlines(node.children, context) };
    case 'heading':
      return { type: 'heading', depth: node.depth, children: readInlines(node.children, context) };
    case 'list': {
      const items = node.children.map((item) => readBlocks(item.children, context, depth + 1));
      return { type: 'list', ordered: node.ordered ?? false, start: node.start ?? 1, items };
    }
    case 'blockquote':
      return { type: 'quote', children: readQuoted(node, context, depth) };
    case 'code':
      return { type: 'preformatted', value: node.value };
    case 'table': {
      const rows = node.children.map((row) =>
        row.children.map((cell) => readInlines(cell.children, context)),
      );
      return { type: 'table', align: node.align ?? [], rows };
    }
    case 'thematicBreak':
      return { type: 'rule' };
    case 'html':
      report(context, { code: 'html', text: node.value }, span);
      return { type: 'paragraph', children: [{ type: 'text', value: node.value }] };
    case 'definition':
      report(context, { code: 'link-definition', label: node.label ?? node.identifier, url: node.url }, span);
      return null;
    default:
      return { type: 'preformatted', value: context.text.slice(span.from, span.to) };
  }
}
