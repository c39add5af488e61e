import type { ElkNode } from 'elkjs/lib/elk.bundled.js';
import type { LaidOutMap, PlacedChart, PlacedLine, PlacedNode, Point } from './laid-out-map.ts';
import type { MapChart, MapGraph } from './map-graph.ts';
import { packCharts } from './pack-charts.ts';
import { sizeNode } from './size-node.ts';
import { type Stack, stacksOf } from './stacks-of.ts';
import { topAt } from './symbols.ts';

/** Layers from top to bottom, lines with right angles that run around the symbols, ways in the order of the file. */
const options = {
  'elk.algorithm': 'layered',
  'elk.direction': 'DOWN',
  'elk.edgeRouting': 'ORTHOGONAL',
  'elk.layered.mergeEdges': 'true',
  'elk.layered.considerModelOrder.strategy': 'NODES_AND_EDGES',
  'elk.layered.nodePlacement.strategy': 'NETWORK_SIMPLEX',
  'elk.layered.spacing.nodeNodeBetweenLayers': '20',
  'elk.layered.spacing.edgeNodeBetweenLayers': '12',
  'elk.layered.spacing.edgeEdgeBetweenLayers': '10',
  'elk.spacing.nodeNode': '22',
  'elk.spacing.edgeNode': '14',
  'elk.spacing.edgeEdge': '12',
  'elk.padding': '[top=2,left=2,bottom=2,right=2]',
};

/** A map with a place for everything. The same graph gives the same places. */
export async function layOut(graph: MapGraph): Promise<LaidOutMap> {
  // It is large, and most who load this module lay nothing out.
  const { default: ELK } = await import('elkjs/lib/elk.bundled.js');
  const elk = new ELK();
  const charts: Omit<PlacedChart, 'x' | 'y'>[] = [];
  for (const chart of graph.charts) {
    const stacks = stacksOf(chart);
    charts.push(placed(chart, stacks, await elk.layout(asElk(chart, stacks))));
  }
  const { title, symptom } = graph;
  return { title, symptom, ...packCharts(charts) };
}

/** Ids are numbered, since those of sections may hold what the layout does not take. */
function asElk({ edges }: MapChart, stacks: readonly Stack[]): ElkNode {
  const ids = new Map(stacks.flatMap(({ members }, at) => members.map(({ id }) => [id, `n${at}`])));
  return {
    id: 'chart',
    layoutOptions: options,
    children: stacks.map(({ width, height }, at) => ({ id: `n${at}`, width, height })),
    edges: edges
      .filter(({ close }) => !close)
      .map(({ from, to, arrow }, at) => ({
        id: `e${at}`,
        sources: [ids.get(from) ?? ''],
        targets: [ids.get(to) ?? ''],
        layoutOptions: { 'elk.layered.priority.straightness': arrow ? '20' : '1' },
      })),
  };
}

function placed(
  { id, heading, nodes, edges }: MapChart,
  stacks: readonly Stack[],
  { width = 0, height = 0, children = [], edges: routes = [] }: ElkNode,
): Omit<PlacedChart, 'x' | 'y'> {
  const places = new Map(
    stacks.flatMap(({ members }, at) =>
      members.map((member) => [member.id, moved(member, children[at] ?? {})] as const),
    ),
  );
  const placedNodes = nodes.map(
    (node): PlacedNode => ({ ...node, ...sizeNode(node), ...(places.get(node.id) ?? { x: 0, y: 0 }) }),
  );
  const byId = new Map(placedNodes.map((node) => [node.id, node]));
  const open = edges.filter(({ close }) => !close);
  const lines = edges.map((edge): PlacedLine => {
    const [from, to] = [byId.get(edge.from), byId.get(edge.to)];
    const { sections = [] } = routes[open.indexOf(edge)] ?? {};
    const points = edge.close
      ? straight(from, to)
      : sections.flatMap(({ startPoint, bendPoints = [], endPoint }) => [
          startPoint,
          ...bendPoints,
          endPoint,
        ]);
    return { ...edge, points: landed(points.map(rounded), to) };
  });
  return { id, heading, width: Math.ceil(width), height: Math.ceil(height), nodes: placedNodes, lines };
}

const straight = (from: PlacedNode | undefined, to: PlacedNode | undefined): readonly Point[] =>
  from && to
    ? [
        { x: from.x + from.width / 2, y: from.y + from.height },
        { x: to.x + to.width / 2, y: to.y },
      ]
    : [];

/** A line ends on the outline, which need not be where the symbol's box ends. */
function landed(points: readonly Point[], to: PlacedNode | undefined): readonly Point[] {
  const end = points.at(-1);
  if (end === undefined || to === undefined) return points;
  return [...points.slice(0, -1), rounded({ x: end.x, y: to.y + topAt(to, end.x - to.x) })];
}

const moved = (point: Point, by: Partial<Point>): Point =>
  rounded({ x: point.x + (by.x ?? 0), y: point.y + (by.y ?? 0) });

const rounded = ({ x, y }: Point): Point => ({ x: Math.round(x), y: Math.round(y) });
