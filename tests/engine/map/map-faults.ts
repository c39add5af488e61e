import type { LaidOutMap, PlacedChart, PlacedNode, Point } from '../../../engine/map/laid-out-map.ts';

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A symbol's box, smaller by `by` on all sides. */
const boxOf = ({ x, y, width, height }: PlacedNode, by: number): Box => ({
  left: x + by,
  right: x + width - by,
  top: y + by,
  bottom: y + height - by,
});

const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

const segmentBox = (a: Point, b: Point): Box => ({
  left: Math.min(a.x, b.x),
  right: Math.max(a.x, b.x) + 0.1,
  top: Math.min(a.y, b.y),
  bottom: Math.max(a.y, b.y) + 0.1,
});

/** What is wrong with where things stand: symbols over each other, lines through symbols, lines that do not begin and end
 *  at theirs, anything outside its piece or the sheet. */
export function mapFaults(map: LaidOutMap): readonly string[] {
  return [...map.charts.flatMap(chartFaults), ...overlaps(map)];
}

function chartFaults(chart: PlacedChart): readonly string[] {
  const { nodes, lines, width, height } = chart;
  const found: string[] = [];
  for (const [at, node] of nodes.entries()) {
    const box = boxOf(node, 0);
    if (box.left < 0 || box.top < 0 || box.right > width || box.bottom > height)
      found.push(`${node.id} is outside its piece`);
    for (const other of nodes.slice(at + 1))
      if (meet(boxOf(node, 0.5), boxOf(other, 0.5))) found.push(`${node.id} lies over ${other.id}`);
  }
  const byId = new Map(nodes.map((node) => [node.id, node]));
  for (const { from, to, points } of lines) {
    const [start, end] = [byId.get(from), byId.get(to)];
    if (start === undefined || end === undefined) {
      found.push(`the line ${from} to ${to} has an end that is not there`);
      continue;
    }
    for (const [index, point] of points.slice(1).entries()) {
      const before = points[index] as Point;
      if (before.x !== point.x && before.y !== point.y) found.push(`the line ${from} to ${to} is oblique`);
      for (const node of nodes)
        if (meet(segmentBox(before, point), boxOf(node, 1.5)) && node !== end)
          found.push(`the line ${from} to ${to} runs through ${node.id}`);
    }
    const [first, last] = [points[0], points.at(-1)];
    if (first?.y !== start.y + start.height || first.x < start.x || first.x > start.x + start.width)
      found.push(`the line ${from} to ${to} does not begin below ${from}`);
    const depth = (last?.y ?? -1) - end.y;
    if (last === undefined || depth < 0 || depth > 14 || last.x < end.x || last.x > end.x + end.width)
      found.push(`the line ${from} to ${to} does not end on top of ${to}`);
  }
  return found;
}

function overlaps({ charts, width, height }: LaidOutMap): readonly string[] {
  const boxes = charts.map((chart) => ({
    id: chart.id,
    left: chart.x,
    right: chart.x + chart.width,
    top: chart.y,
    bottom: chart.y + chart.height,
  }));
  return boxes.flatMap((box, at) => [
    ...(box.left < 0 || box.top < 0 || box.right > width || box.bottom > height
      ? [`piece ${box.id} is off the sheet`]
      : []),
    ...boxes
      .slice(at + 1)
      .flatMap((other) => (meet(box, other) ? [`piece ${box.id} lies over ${other.id}`] : [])),
  ]);
}
