import { type Element, element } from '../markup/index.ts';
import type { PlacedNode } from './laid-out-map.ts';
import type { TextLine } from './size-node.ts';
import { symbols } from './symbols.ts';

/** A symbol with its text. Circles lead to each other where the map is shown in a browser. */
export function drawNode(node: PlacedNode): Element {
  const { id, symbol, role, section, number, x, y, lines } = node;
  const shape = [symbols[symbol](node), lines.map(drawText)];
  const leads = symbol === 'connector' && role !== 'comes from' && number !== null;
  return element(
    'g',
    {
      class: symbol === 'connector' || symbol === 'decision' ? symbol : role.split(' ')[0],
      transform: `translate(${x} ${y})`,
      id: section === id && number !== null ? `s${number}` : undefined,
      'data-section': section ?? undefined,
      role: symbol === 'words' || symbol === 'decision' ? undefined : 'graphics-symbol',
      'aria-label': symbol === 'words' || symbol === 'decision' ? undefined : nameOf(node),
    },
    leads ? element('a', { href: `#s${number}` }, shape) : shape,
  );
}

const drawText = ({ text, style, x, y, anchor }: TextLine): Element =>
  element('text', { class: anchor === 'start' ? `${style} start` : style, x, y }, text);

const nameOf = ({ role, number, title, notes }: PlacedNode): string =>
  [role, number, title, ...notes].filter((part) => part !== null && part !== '').join(', ');
