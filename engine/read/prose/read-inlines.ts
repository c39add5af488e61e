import type { Inline } from '../../model/prose.ts';
import type { PhrasingContent } from '../../parse/parse-body.ts';
import { type ReadContext, report } from '../read-context.ts';
import { isImageAddress, isLinkAddress } from './addresses.ts';
import { readLink } from './read-link.ts';
import { spanOf } from './span-of.ts';

/** Emphasis inside emphasis is followed this far; nobody reads on below. */
const deepest = 20;

/** Running text, from the parser's nodes to the model's. */
export function readInlines(nodes: readonly PhrasingContent[], context: ReadContext, depth = 0): Inline[] {
  return nodes.flatMap((node) => readInline(node, context, depth));
}

function readInline(node: PhrasingContent, context: ReadContext, depth: number): Inline[] {
  const span = spanOf(node);
  if (depth > deepest) return [{ type: 'text', value: context.text.slice(span.from, span.to) }];
  switch (node.type) {
    case 'text':
      noteBraces(span.from, context.text.slice(span.from, span.to), context);
      return [{ type: 'text', value: node.value }];
    case 'inlineCode':
      noteCode(node.value, span.from, span.to, context);
      return [{ type: 'code', value: node.value }];
    case 'emphasis':
    case 'strong':
      return [{ type: node.type, children: readInlines(node.children, context, depth + 1) }];
    case 'break':
      return [{ type: 'break' }];
    case 'link': {
      const children = readInlines(node.children, context, depth + 1);
      if (!isLinkAddress(node.url)) {
        report(context, { code: 'link-address', url: node.url }, span);
        return children;
      }
      context.links.push(readLink(node, context));
      return [{ type: 'link', url: node.url, children }];
    }
    case 'image':
      if (!isImageAddress(node.url)) {
        report(context, { code: 'image-address', url: node.url }, span);
        return [{ type: 'text', value: node.alt ?? '' }];
      }
      return [{ type: 'image', url: node.url, alt: node.alt ?? '' }];
    case 'html':
      report(context, { code: 'html', text: node.value }, span);
      return [{ type: 'text', value: node.value }];
    case 'linkReference':
      return readInlines(node.children, context, depth + 1);
    case 'imageReference':
      return [{ type: 'text', value: node.alt ?? '' }];
    default:
      return [{ type: 'text', value: context.text.slice(span.from, span.to) }];
  }
}

function noteCode(name: string, from: number, to: number, context: ReadContext): void {
  const inside = context.text.slice(from, to).indexOf(name);
  const start = inside < 0 ? from : from + inside;
  context.codes.push({ name, from: start, to: inside < 0 ? to : start + name.length });
}

function noteBraces(from: number, written: string, context: ReadContext): void {
  if (!written.includes('{')) return;
  for (const match of written.matchAll(/\{([^{}\n]{1,80})\}/g)) {
    const start = from + match.index;
    context.braces.push({ name: match[1] ?? '', from: start, to: start + match[0].length });
  }
}
