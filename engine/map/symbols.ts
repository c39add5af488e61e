import { type Element, element } from '../markup/index.ts';
import type { MapSymbol } from './map-graph.ts';
import { radiusOf } from './size-node.ts';

interface Box {
  readonly width: number;
  readonly height: number;
  readonly number: string | null;
  readonly role: string;
}

/** How far the upper edge of manual input falls from right to left. */
const slope = 14;

const outline = (d: string, className = 'outline'): Element => element('path', { class: className, d });

const box = ({ width, height }: Box): Element => outline(`M0 0H${width}V${height}H0Z`);

/** The outline of every symbol, from its upper left corner, as ISO 5807 draws them: a terminator has round ends, manual
 *  input a sloping upper edge, a predefined process a second line at both sides. */
export const symbols: { readonly [Symbol in MapSymbol]: (box: Box) => readonly Element[] } = {
  terminator: ({ width, height }) => {
    const round = Math.min(height / 2, 22);
    return [element('rect', { class: 'outline', width, height, rx: round, ry: round })];
  },
  process: (size) => [box(size)],
  decision: ({ width, height }) => [
    outline(`M${width / 2} 0L${width} ${height / 2}L${width / 2} ${height}L0 ${height / 2}Z`),
  ],
  'manual-input': ({ width, height }) => [outline(`M0 ${slope}L${width} 0V${height}H0Z`)],
  'predefined-process': (size) => [
    box(size),
    outline(`M10 0V${size.height}M${size.width - 10} 0V${size.height}`, 'inner'),
  ],
  connector: ({ width, height, number, role }) => {
    const r = radiusOf(number);
    return [
      element('circle', {
        class: 'outline',
        cx: width / 2,
        cy: role === 'comes from' ? height - r : r,
        r: r - 0.75,
      }),
    ];
  },
  words: () => [],
};

/** How far below its box the outline of a symbol begins at `x`. */
export const topAt = (
  { symbol, width }: { readonly symbol: MapSymbol; readonly width: number },
  x: number,
): number => (symbol === 'manual-input' ? slope * (1 - x / width) : 0);
