import { type Element, element, printXml } from '../markup/index.ts';
import { drawLine } from './draw-line.ts';
import { drawNode } from './draw-node.ts';
import type { LaidOutMap, PlacedChart } from './laid-out-map.ts';
import { headingRoom } from './pack-charts.ts';
import { style } from './style.ts';
import { wrapText } from './wrap-text.ts';

/** Room for the title above everything. */
const titleRoom = 64;

/** A map as an SVG document that stands alone: no script, no other file. */
export function drawMap(map: LaidOutMap): string {
  const name = wrapText(map.title, Math.max(200, map.width - 56), 26, true);
  const top = titleRoom + (name.length - 1) * 32;
  const [width, height] = [map.width, map.height + top - 20];
  return printXml(
    element(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        width,
        height,
        viewBox: `0 0 ${width} ${height}`,
        role: 'graphics-document',
        'aria-roledescription': 'flowchart',
        'aria-labelledby': 'title',
        'aria-describedby': 'symptom',
      },
      element('title', { id: 'title' }, map.title || 'A tree'),
      element('desc', { id: 'symptom' }, map.symptom),
      element('style', {}, style),
      element('rect', { class: 'paper', width, height }),
      name.map((line, at) => element('text', { class: 'name start', x: 28, y: 46 + at * 32 }, line)),
      element('g', { transform: `translate(0 ${top - 20})` }, map.charts.map(drawChart)),
    ),
  );
}

const drawChart = ({ heading, x, y, width, height, nodes, lines }: PlacedChart): Element =>
  element(
    'g',
    { transform: `translate(${x} ${y})` },
    heading !== null && [
      element('rect', {
        class: 'frame',
        x: -14,
        y: -headingRoom + 4,
        width: width + 28,
        height: height + headingRoom + 10,
      }),
      element('text', { class: 'heading start', x: 0, y: -16 }, heading),
    ],
    lines.map(drawLine),
    nodes.map(drawNode),
  );
