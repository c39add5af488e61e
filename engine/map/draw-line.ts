import { type Element, element } from '../markup/index.ts';
import type { PlacedLine, Point } from './laid-out-map.ts';

/** Length and half the width of an arrow head. */
const head = { long: 9, half: 3.5 };

/** A flow line. All lines run down to their symbol, so the head points down. */
export function drawLine({ points, arrow }: PlacedLine): Element {
  const end = points.at(-1) ?? { x: 0, y: 0 };
  const shortened = arrow ? [...points.slice(0, -1), { x: end.x, y: end.y - head.long + 2 }] : points;
  return element(
    'g',
    {},
    element('path', { class: 'flow', d: pathOf(shortened) }),
    arrow &&
      element('path', {
        class: 'arrow',
        d: `M${end.x} ${end.y}l${-head.half} ${-head.long}h${2 * head.half}Z`,
      }),
  );
}

const pathOf = (points: readonly Point[]): string =>
  points.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');

const round = (value: number): number => Math.round(value * 10) / 10;
